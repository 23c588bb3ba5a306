import { readFileSync } from 'node:fs'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { plan } from '../../src/evaluation/plan.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'
import { findMargins } from '../../src/study/margins.ts'
import { measureOf } from '../../src/study/measure.ts'
import { preparedSamples, sample } from '../../src/study/sample.ts'
import { swingsOf } from '../../src/study/swings.ts'
import { milliseconds, say } from './measure.ts'

/** So many blocks of 25 steps, each linked to the one before; `ranged` assumptions with a range. */
export function longSheet(blocks: number, ranged: number): string {
  const assumptions = Array.from(
    { length: ranged },
    (_, at) => `p_${at}: { value: ${2 + (at % 7) / 10}, basis: b, range: 1.5 to 3.5 }`,
  )
  const work = Array.from({ length: blocks }, (_, block) => {
    const own = (at: number): string => `a.p_${(block * 3 + at) % ranged}`
    const start = block === 0 ? own(0) : `w_${block - 1}.s_23`
    const steps = Array.from({ length: 24 }, (__, at) =>
      at === 0
        ? `s_0 = ${start} / 2 + ${own(1)}`
        : `s_${at} = ${['sqrt', 'abs', 'cbrt'][at % 3]}(s_${at - 1} * ${own(at % 3)} + ${at}) / 2`,
    )
    return `\`\`\`work w_${block}\n${steps.join('\n')}\ns_23 <= 100 # block ${block}\n\`\`\`\n`
  })
  return `---\ntitle: Long sheet\n---\n\n\`\`\`assume a\n${assumptions.join('\n')}\n\`\`\`\n\n${work.join('\n')}`
}

/** Margins of the example, a tornado of a hundred assumptions, a hundred thousand samples of a long sheet. */
export async function benchStudies(): Promise<void> {
  const path = 'examples/skerry-point/skerry-point.md'
  const example = plan(readNotebook(readFileSync(path, 'utf8'), { path }), catalogue)
  say('margins of the example', `${(await milliseconds(() => void findMargins(example), 3)).toFixed(0)} ms`)
  const long = plan(readNotebook(longSheet(60, 100), { path: 'long.md' }), catalogue)
  const results = evaluate(long)
  const measure = measureOf(results, 'w_59.s_23')
  if (!measure) throw new Error('the long sheet has its last step')
  const tornado = await milliseconds(() => void swingsOf(long, [measure]), 5)
  say('tornado of 100 assumptions over 1,500 lines', `${tornado.toFixed(1)} ms`, {
    text: 'under 50 ms',
    met: tornado < 50,
  })
  const prepared = preparedSamples(long)
  const options = { seed: 1, spread: 'uniform', latin: false, measures: [measure] } as const
  const start = performance.now()
  sample(prepared, { ...options, samples: 100_000 })
  const seconds = (performance.now() - start) / 1000
  say('100,000 samples of 1,500 lines', `${seconds.toFixed(1)} s`, { text: 'under 5 s', met: seconds < 5 })
}
