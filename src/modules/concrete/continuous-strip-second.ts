import type { Comparison, Given, Second, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { solve, step, when } from '../words.ts'
import { continuousStrip } from './continuous-strip.ts'

const moment = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
const more = (words: readonly string[], spans: readonly string[]) => ({
  choice: 'spans',
  is: words.filter(word => spans.includes(word)),
})
const three = ['three spans', 'four spans', 'five spans or more']

const coefficient = (name: string, says: string): Given => ({ dimension: 'ratio', name, says })
const ofEnd = coefficient('c_end', 'largest sagging moment of an end span, as a coefficient')
const ofFirst = coefficient('c_first', 'largest hogging moment, first interior support, as a coefficient')
const ofMiddle = coefficient('c_mid', 'largest sagging moment of an interior span, as a coefficient')

const elastic = (name: string, formula: string, says: string): Step => step(name, formula, { says, unit: moment })

/**
 * The strip again as a continuous beam on supports that turn, the live load wherever it is worst. `spans` are the words the module
 * knows; `compare` says how near each moment must be. Takes `w_u`, `live_load` and `span`.
 */
export const continuousStripSecond = (spans: readonly string[], compare: readonly Comparison[]): Second => {
  const analysis = (gives: Readonly<Record<string, Given>>): Step =>
    solve(continuousStrip, {
      takes: { live: 'r_q' },
      words: { spans: { choice: 'spans' } },
      gives,
      says: 'the strip as a continuous beam of equal spans',
      source: cite('statics', 'three moments'),
    })
  const short: readonly Step[] = [analysis({ end: ofEnd, first: ofFirst })]
  const long: readonly Step[] = [
    analysis({ end: ofEnd, first: ofFirst, middle: ofMiddle }),
    elastic('M_mid_el', 'c_mid * w_u * span^2', 'elastic sagging moment of an interior span'),
  ]
  return {
    title: 'Continuous beam',
    says: 'The strip is solved as an elastic beam over equal spans on supports that turn, permanent load everywhere and live load wherever it is worst. The coefficients of the code round this off, allow for redistribution and for supports that hold.',
    steps: [
      step('r_q', 'live_load / w_u', { says: 'share of the load that may be missing on any span' }),
      ...(spans.includes('two spans') ? [when(more(spans, three), { yes: long, no: short })] : long),
      elastic('M_end_el', 'c_end * w_u * span^2', 'elastic sagging moment of an end span'),
      elastic('M_first_el', '-c_first * w_u * span^2', 'elastic hogging moment at the first interior support'),
    ],
    compare,
  }
}
