import type { Comparison, Given, Second } from '../module.ts'
import { cite } from '../sources.ts'
import { solve } from '../words.ts'
import { wallStripDifferences } from './wall-strip-beams.ts'

const moment = (name: string, says: string): Given => ({
  dimension: 'moment_per_length',
  name,
  says,
  unit: { SI: 'kN*m/m', US: 'lbf*ft/ft' },
})
const force = (name: string, says: string): Given => ({
  dimension: 'force_per_length',
  name,
  says,
  unit: { SI: 'kN/m', US: 'plf' },
})
const fixed = (end: 'base' | 'top') => ({ choice: end, is: ['fixed'] })
const compare = (name: string, more: Partial<Comparison> = {}): Comparison => ({
  first: name,
  second: `${name}_2`,
  band: 0.002,
  says: 'the same theory in 400 links; a jump in the pressure may fall within one',
  ...more,
})

/** The strip by finite differences, from the diagram and the supports alone. */
export const wallStripSecond: Second = {
  title: 'Finite differences',
  says: 'The strip is solved again as a chain of 400 links with springs, from the factored diagram and the supports alone; no formula for fixed-end moments is used.',
  steps: [
    solve(wallStripDifferences, {
      takes: { z: { list: 'diagram.z' }, q: { list: 'diagram.q' }, height: 'height' },
      words: { base: { choice: 'base' }, top: { choice: 'top' } },
      gives: {
        base: moment('M_base_2', 'moment at the base'),
        top: moment('M_top_2', 'moment at the top'),
        span: moment('M_span_2', 'largest moment'),
        at: {
          dimension: 'length',
          name: 'z_m_2',
          says: 'its depth from the top',
          unit: { SI: 'm', US: 'ft' },
        },
        r_base: force('R_base_2', 'reaction at the base'),
        r_top: force('R_top_2', 'reaction at the top'),
      },
      says: 'the strip as a chain of links',
      source: cite('statics', "EI w'''' = p"),
    }),
  ],
  compare: [
    compare('M_base', { when: fixed('base') }),
    compare('M_top', { when: fixed('top') }),
    compare('M_span', { when: { choice: 'top', is: ['pinned', 'fixed'] } }),
    compare('R_base'),
    compare('R_top', { when: { choice: 'top', is: ['pinned', 'fixed'] } }),
  ],
}
