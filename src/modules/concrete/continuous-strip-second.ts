import type { Comparison, Given, Second, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { solve, step, when } from '../words.ts'
import { continuousStrip } from './continuous-strip.ts'

const moment = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
const coefficient = (name: string, says: string): Given => ({ dimension: 'ratio', name, says })
const ofEnd = coefficient('c_end', 'largest sagging moment of an end span, as a coefficient')
const ofFirst = coefficient('c_first', 'largest hogging moment, first interior support, as a coefficient')
const ofShear = coefficient('c_out', 'largest shear of an end span, as a coefficient')
const ofInner = coefficient('c_in', 'sagging and mean hogging moment of an interior span, as a coefficient')

const elastic = (name: string, formula: string, says: string): Step => step(name, formula, { says, unit: moment })

/** Elastic sagging moment of an end span, `M_end_el`. */
export const endElastic: Step = elastic('M_end_el', 'c_end * w_u * span^2', 'elastic sagging moment of an end span')

/** Sagging and mean hogging moment of an end span, `M_end_strip`, and the same of the beam. Takes `M_edge` too. */
export const endTotal: readonly Step[] = [
  elastic('M_end_strip', 'M_end - (M_edge + M_first) / 2', 'sagging and mean hogging moment of an end span'),
  elastic('M_end_strip_el', '(c_end + c_first / 2) * w_u * span^2', 'the same, elastic beam'),
]

/** The same of an interior span, `M_mid_strip`; `mean` is the mean of its hogging moments by the table. */
export const innerTotal = (mean: string): readonly Step[] => [
  elastic('M_mid_strip', `M_mid - ${mean}`, 'sagging and mean hogging moment of an interior span'),
  elastic('M_mid_strip_el', 'c_in * w_u * span^2', 'the same, elastic beam'),
]

interface StripSecond {
  /** The words for the number of spans that the module knows. */
  readonly spans: readonly string[]
  /** What the table gives its spans, and the beam. */
  readonly totals: readonly Step[]
  readonly compare: readonly Comparison[]
}

/**
 * The strip again as a continuous beam on supports that turn, the live load wherever it is worst. `compare` says how near each
 * answer must be. Takes `w_u`, `live_load`, `span` and the moments of the table.
 */
export const continuousStripSecond = ({ spans, totals, compare }: StripSecond): Second => ({
  title: 'Continuous beam',
  says: 'The strip is solved as an elastic beam over equal spans on supports that turn, permanent load everywhere and live load wherever it is worst. The coefficients of the code count on redistribution and on supports that hold; these move moment between span and support, but what a span has in sagging and mean hogging together they leave.',
  steps: [
    step('r_q', 'live_load / w_u', { says: 'share of the load that may be missing on any span' }),
    ...beam(spans),
    elastic('M_first_el', '-c_first * w_u * span^2', 'elastic hogging moment at the first interior support'),
    ...totals,
    step('V_outer_el', 'c_out * w_u * span', {
      says: 'elastic shear at the first interior support, end span',
      unit: { SI: 'kN/m', US: 'plf' },
    }),
  ],
  compare,
})

function beam(spans: readonly string[]): readonly Step[] {
  const short: Readonly<Record<string, Given>> = { end: ofEnd, first: ofFirst, v_outer: ofShear }
  const long = { ...short, inner: ofInner }
  if (!spans.includes('two spans')) return [solved(long)]
  return [when({ choice: 'spans', is: ['two spans'] }, { yes: [solved(short)], no: [solved(long)] })]
}

const solved = (gives: Readonly<Record<string, Given>>): Step =>
  solve(continuousStrip, {
    takes: { live: 'r_q' },
    words: { spans: { choice: 'spans' } },
    gives,
    says: 'the strip as a continuous beam of equal spans',
    source: cite('statics', 'three moments'),
  })
