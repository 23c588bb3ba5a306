import type { Input, Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { choice, ratio, step, when } from '../words.ts'

const areaLoad = { SI: 'kN/m^2', US: 'psf' }

/** The combinations that have reduction factors of their own, and those of EN 1990. */
const reduced = { choice: 'combination', is: ['EN 1990 6.10a and 6.10b'] }
const en1990 = { choice: 'combination', is: ['EN 1990 6.10', 'EN 1990 6.10a and 6.10b'] }

/** Inputs of every module that combines a permanent and a live load: the rule, and the factors only EN 1990 asks for. */
export const combinationInputs = {
  combination: choice({
    says: 'combination rule for the factored load',
    words: {
      'IS 456': 'IS 456 Table 18, dead and imposed load: 1.5 on both',
      'ACI 318': 'ACI 318-19 Table 5.3.1, D and L: the larger of 1.4 D and 1.2 D + 1.6 L',
      'EN 1990 6.10': 'EN 1990 expression 6.10: 1.35 G + 1.5 Q',
      'EN 1990 6.10a and 6.10b': 'EN 1990: the larger of expressions 6.10a and 6.10b',
    },
  }),
  psi_0: ratio({
    says: 'share of the live load in expression 6.10a',
    note: '1 is the safe bound; EN 1990 Table A1.1 gives 0.7 for categories A to D, F and G and 1.0 for stores',
    symbol: 'psi_0',
    when: reduced,
    least: '0',
    most: '1',
    default: '1',
    source: cite('en-1990', 'Table A1.1'),
  }),
  xi: ratio({
    says: 'reduction of the permanent load in expression 6.10b',
    note: 'The national annex may change it',
    symbol: 'xi',
    when: reduced,
    least: '0.8',
    most: '1',
    default: '0.85',
    source: cite('en-1990', 'Table A1.2(B)'),
  }),
  psi_2: ratio({
    says: 'share of the live load that stays for long',
    note: 'For crack width and deflection; 1 is the safe bound, EN 1990 Table A1.1 has values by category',
    symbol: 'psi_2',
    least: '0',
    most: '1',
    default: '1',
    source: cite('practice'),
  }),
} as const satisfies Record<string, Input>

/** One combination: its parts, as formulas over `g_k` and `q_k`; without `live`, of permanent load alone. */
interface Combination {
  readonly permanent: string
  readonly live?: string
  readonly says: string
  readonly source: Citation
}

const load = (name: string, formula: string, says: string, source?: Citation): Step =>
  step(name, formula, { says, unit: areaLoad, ...(source ? { source } : {}) })

/** A rule with one combination. */
const single = (permanent: string, live: string, source: Citation): readonly Step[] => [
  load('g_u', permanent, 'factored permanent load', source),
  load('q_u', live, 'factored live load', source),
  load('w_u', 'g_u + q_u', 'factored load'),
]

/** A rule with two combinations, of which the larger governs; `says` where the first does. */
const larger = (first: Combination, second: Combination, says: string): readonly Step[] => [
  whole('w_a', first),
  whole('w_b', second),
  when({ formula: 'w_a > w_b' }, { says, yes: partsOf(first), no: partsOf(second) }),
  load('w_u', 'max(w_a, w_b)', 'factored load: the governing combination'),
]

const whole = (name: string, { permanent, live, says, source }: Combination): Step =>
  load(name, live === undefined ? permanent : `${permanent} + ${live}`, says, source)

const partsOf = ({ permanent, live = '0 kN/m^2' }: Combination): readonly Step[] => [
  load('g_u', permanent, 'permanent part of the governing combination'),
  load('q_u', live, 'live part of the governing combination'),
]

const is456 = single('1.5 * g_k', '1.5 * q_k', cite('is-456', 'Table 18'))
const en1990Single = single('1.35 * g_k', '1.5 * q_k', cite('en-1990', '6.10'))

const aci318 = larger(
  { permanent: '1.4 * g_k', says: 'combination of dead load alone', source: cite('aci-318', '5.3.1a') },
  {
    permanent: '1.2 * g_k',
    live: '1.6 * q_k',
    says: 'combination of dead and live load',
    source: cite('aci-318', '5.3.1b'),
  },
  'dead load alone governs: live load under one eighth of it',
)

const en1990Pair = larger(
  {
    permanent: '1.35 * g_k',
    live: '1.5 * psi_0 * q_k',
    says: 'combination with the live load reduced',
    source: cite('en-1990', '6.10a'),
  },
  {
    permanent: 'xi * 1.35 * g_k',
    live: '1.5 * q_k',
    says: 'combination with the permanent load reduced',
    source: cite('en-1990', '6.10b'),
  },
  'expression 6.10a governs',
)

const only = (word: string, yes: readonly Step[], no: readonly Step[]): Step =>
  when({ choice: 'combination', is: [word] }, { yes, no })

/** IS 456 and ACI 318 name no load that stays for long: the quasi-permanent combination of EN 1990 is common practice there. */
const staying = (source: Citation): readonly Step[] => [
  load('w_qp', 'g_k + psi_2 * q_k', 'load that stays for long (crack width, deflection)', source),
]

/**
 * From `g_k` and `q_k`, both kN/m^2: the characteristic load `w_k`, the long-term load `w_qp`, and the factored `g_u`, `q_u`
 * and `w_u` of the chosen rule. Source: IS 456 Table 18, ACI 318-19 5.3.1, EN 1990 6.4.3.2 and 6.5.3.
 */
export const combinationSteps: readonly Step[] = [
  step('w_k', 'g_k + q_k', { says: 'characteristic load', symbol: 'w_ser', unit: areaLoad }),
  when(en1990, { yes: staying(cite('en-1990', '6.16b')), no: staying(cite('practice')) }),
  only('IS 456', is456, [only('ACI 318', aci318, [only('EN 1990 6.10', en1990Single, en1990Pair)])]),
]
