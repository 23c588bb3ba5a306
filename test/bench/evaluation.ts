import { readFileSync } from 'node:fs'
import { evaluate, run } from '../../src/evaluation/evaluate.ts'
import { makeWorkings } from '../../src/evaluation/make-workings.ts'
import { plan } from '../../src/evaluation/plan.ts'
import type { Plan } from '../../src/evaluation/plan-types.ts'
import { restingOn } from '../../src/evaluation/resting.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'
import { nanoseconds, say } from './measure.ts'

const ms = (ns: number): string => `${(ns / 1e6).toFixed(3)} ms`

/** The example's results again after one changed assumption, with and without numerical methods that rest on it. */
export function benchEvaluation(): void {
  const path = 'examples/skerry-point/skerry-point.md'
  const planned = plan(readNotebook(readFileSync(path, 'utf8'), { path }), catalogue)
  const steps = planned.trail.length
  const widest = widestOf(planned, solves => solves === 0)
  const formulas = nanoseconds(() => void run(planned, { changed: widest.next(), second: false }), warm)
  say(`example, ${steps} lines: ${widest.key} changed to all results, ${widest.ops} operations`, ms(formulas), {
    text: 'under 1 ms, no solve on the path',
    met: formulas < 1e6,
  })
  const slots = planned.start.slice()
  const whole = () => {
    slots.set(planned.start)
    for (const op of planned.ops) if (!op.second) op.run(slots)
  }
  say(`  the whole again, ${planned.ops.filter(op => !op.second).length} operations`, ms(nanoseconds(whole, warm)))
  const solving = widestOf(planned, solves => solves > 0)
  say(
    `  ${solving.key} changed, ${solving.ops} operations and ${solving.solves} solves`,
    ms(nanoseconds(() => void run(planned, { changed: solving.next(), second: false }))),
  )
  say(
    '  with second methods and their solves',
    ms(nanoseconds(() => void run(planned, { changed: solving.next() }), 3)),
  )
  const judged = () => void evaluate(planned, { changed: widest.next(), second: false })
  say('  with every value judged', ms(nanoseconds(judged, 3)))
  const results = evaluate(planned)
  say('  workings with digits chosen', ms(nanoseconds(() => void makeWorkings(results), 3)))
}

/** Batches enough for the functions to be compiled as they are in a study. */
const warm = 41

/** Of the assumptions with so many solves on their path, the one on which most rests; each `next` a new value for it. */
function widestOf(planned: Plan, isMeant: (solves: number) => boolean) {
  const all = [...planned.names.values()].flatMap(named => {
    if (named.kind !== 'number' || named.origin !== 'assumption') return []
    const { ops } = restingOn(planned, [named.slot], { second: false })
    const solves = ops.filter(op => op.solves).length
    return isMeant(solves) ? [{ key: named.key, slot: named.slot, ops: ops.length, solves }] : []
  })
  const [widest] = all.sort((a, b) => b.ops - a.ops)
  if (!widest) throw new Error('the example has such an assumption')
  let turn = 0
  const next = (): ReadonlyMap<string, number> => {
    turn += 1
    return new Map([[widest.key, (planned.start[widest.slot] ?? 0) * (1 + 1e-6 * (turn % 1000))]])
  }
  return { ...widest, next }
}
