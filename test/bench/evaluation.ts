import { readFileSync } from 'node:fs'
import { evaluate, run } from '../../src/evaluation/evaluate.ts'
import { makeWorkings } from '../../src/evaluation/make-workings.ts'
import { plan } from '../../src/evaluation/plan.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'
import { nanoseconds, say } from './measure.ts'

const ms = (ns: number): string => `${(ns / 1e6).toFixed(3)} ms`

/** The whole example again after one changed assumption, with and without the numerical methods. */
export function benchEvaluation(): void {
  const path = 'examples/skerry-point/skerry-point.md'
  const planned = plan(readNotebook(readFileSync(path, 'utf8'), { path }), catalogue)
  const assumption = [...planned.names.values()].find(named => named.kind === 'number' && named.origin === 'assumption')
  if (assumption?.kind !== 'number') throw new Error('the example has an assumption')
  let turn = 0
  const changed = () => {
    turn += 1
    return new Map([[assumption.key, (planned.start[assumption.slot] ?? 0) * (1 + 1e-6 * (turn % 1000))]])
  }
  const formulas = nanoseconds(() => void run(planned, { changed: changed(), second: false }))
  const steps = planned.trail.length
  say(`example, ${steps} lines: changed assumption to all results`, ms(formulas), {
    text: 'under 1 ms, no solve on the path',
    met: formulas < 1e6,
  })
  say('  with second methods and their solves', ms(nanoseconds(() => void run(planned, { changed: changed() }), 3)))
  say(
    '  with every value judged',
    ms(nanoseconds(() => void evaluate(planned, { changed: changed(), second: false }), 3)),
  )
  const results = evaluate(planned)
  say('  workings with digits chosen', ms(nanoseconds(() => void makeWorkings(results), 3)))
}
