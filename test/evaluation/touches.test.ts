import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { calcNotebook } from '../../src/evaluation/calc-notebook.ts'
import { plan } from '../../src/evaluation/plan.ts'
import type { Plan } from '../../src/evaluation/plan-types.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'

/** Runs a plan over slots that remember who looked at them and who changed them: what an op touched unsaid. */
function unsaid(planned: Plan): string[] {
  const plain = Float64Array.from(planned.start)
  const faults: string[] = []
  for (const [index, op] of planned.ops.entries()) {
    const [reads, writes] = [new Set(op.reads), new Set(op.writes)]
    const watched = new Proxy(plain, {
      get: (slots, at) => {
        if (typeof at === 'string' && /^\d+$/.test(at) && !reads.has(Number(at))) faults.push(`op ${index} reads ${at}`)
        return Reflect.get(slots, at)
      },
      set: (slots, at, value) => {
        if (!writes.has(Number(at))) faults.push(`op ${index} writes ${String(at)}`)
        return Reflect.set(slots, at, value)
      },
    })
    op.run(watched)
  }
  return faults
}

describe('ops', () => {
  it('touch only the slots they say, in the example', () => {
    const path = 'examples/skerry-point/skerry-point.md'
    expect(unsaid(plan(readNotebook(readFileSync(path, 'utf8'), { path }), catalogue))).toEqual([])
  })

  it.each(catalogue.filter(module => module.published.length > 0).map(module => [module.id, module] as const))(
    'touch only the slots they say, in the published cases of %s',
    (_, module) => {
      for (const published of module.published ?? [])
        expect(unsaid(plan(calcNotebook(module, published.inputs, 'SI'), [module]))).toEqual([])
    },
  )
})
