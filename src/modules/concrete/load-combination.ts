import type { Input, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, ratio, step, when } from '../words.ts'

const areaLoad = { SI: 'kN/m^2', US: 'psf' }

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
    note: '1 is the safe bound; EN 1990 Table A1.1 gives 0.7 for categories A to D, F and G and 1.0 for stores. For EN 1990 only',
    symbol: 'psi_0',
    least: '0',
    most: '1',
    default: '1',
    source: cite('en-1990', 'Table A1.1'),
  }),
  xi: ratio({
    says: 'reduction of the permanent load in expression 6.10b',
    note: 'The national annex may change it. For EN 1990 only',
    symbol: 'xi',
    least: '0.8',
    most: '1',
    default: '0.85',
    source: cite('en-1990', 'Table A1.2(B)'),
  }),
  psi_2: ratio({
    says: 'share of the live load that stays for long',
    note: 'For crack width and deflection; 1 is the safe bound',
    symbol: 'psi_2',
    least: '0',
    most: '1',
    default: '1',
    source: cite('en-1990', 'Table A1.1'),
  }),
} as const satisfies Record<string, Input>

const is456: readonly Step[] = [
  step('g_u', '1.5 * g_k', { says: 'factored permanent load', unit: areaLoad, source: cite('is-456', 'Table 18') }),
  step('q_u', '1.5 * q_k', { says: 'factored live load', unit: areaLoad, source: cite('is-456', 'Table 18') }),
  step('w_u', 'g_u + q_u', { says: 'factored load', unit: areaLoad }),
]

const aci318: readonly Step[] = [
  step('w_a', '1.4 * g_k', {
    says: 'combination of dead load alone',
    unit: areaLoad,
    source: cite('aci-318', '5.3.1a'),
  }),
  step('w_b', '1.2 * g_k + 1.6 * q_k', {
    says: 'combination of dead and live load',
    unit: areaLoad,
    source: cite('aci-318', '5.3.1b'),
  }),
  when(
    { formula: 'w_a > w_b' },
    {
      says: 'dead load alone governs: live load under one eighth of it',
      yes: [
        step('g_u', '1.4 * g_k', { says: 'permanent part of the governing combination', unit: areaLoad }),
        step('q_u', '0 kN/m^2', { says: 'live part of the governing combination', unit: areaLoad }),
      ],
      no: [
        step('g_u', '1.2 * g_k', { says: 'permanent part of the governing combination', unit: areaLoad }),
        step('q_u', '1.6 * q_k', { says: 'live part of the governing combination', unit: areaLoad }),
      ],
    },
  ),
  step('w_u', 'max(w_a, w_b)', { says: 'factored load: the governing combination', unit: areaLoad }),
]

const en1990Single: readonly Step[] = [
  step('g_u', '1.35 * g_k', { says: 'factored permanent load', unit: areaLoad, source: cite('en-1990', '6.10') }),
  step('q_u', '1.5 * q_k', { says: 'factored live load', unit: areaLoad, source: cite('en-1990', '6.10') }),
  step('w_u', 'g_u + q_u', { says: 'factored load', unit: areaLoad }),
]

const en1990Pair: readonly Step[] = [
  step('w_a', '1.35 * g_k + 1.5 * psi_0 * q_k', {
    says: 'combination with the live load reduced',
    unit: areaLoad,
    source: cite('en-1990', '6.10a'),
  }),
  step('w_b', 'xi * 1.35 * g_k + 1.5 * q_k', {
    says: 'combination with the permanent load reduced',
    unit: areaLoad,
    source: cite('en-1990', '6.10b'),
  }),
  when(
    { formula: 'w_a > w_b' },
    {
      says: 'expression 6.10a governs',
      yes: [
        step('g_u', '1.35 * g_k', { says: 'permanent part of the governing combination', unit: areaLoad }),
        step('q_u', '1.5 * psi_0 * q_k', { says: 'live part of the governing combination', unit: areaLoad }),
      ],
      no: [
        step('g_u', 'xi * 1.35 * g_k', { says: 'permanent part of the governing combination', unit: areaLoad }),
        step('q_u', '1.5 * q_k', { says: 'live part of the governing combination', unit: areaLoad }),
      ],
    },
  ),
  step('w_u', 'max(w_a, w_b)', { says: 'factored load: the governing combination', unit: areaLoad }),
]

const chosenRule: Step = when(
  { choice: 'combination', is: ['IS 456'] },
  {
    yes: is456,
    no: [
      when(
        { choice: 'combination', is: ['ACI 318'] },
        {
          yes: aci318,
          no: [when({ choice: 'combination', is: ['EN 1990 6.10'] }, { yes: en1990Single, no: en1990Pair })],
        },
      ),
    ],
  },
)

/**
 * From `g_k` and `q_k`, both kN/m^2: the characteristic load `w_k`, the long-term load `w_qp`, and the factored `g_u`, `q_u`
 * and `w_u` of the chosen rule. Source: IS 456 Table 18, ACI 318-19 5.3.1, EN 1990 6.4.3.2 and 6.5.3.
 */
export const combinationSteps: readonly Step[] = [
  step('w_k', 'g_k + q_k', { says: 'characteristic load', unit: areaLoad }),
  step('w_qp', 'g_k + psi_2 * q_k', {
    says: 'load that stays for long (crack width, deflection)',
    unit: areaLoad,
    source: cite('en-1990', '6.16b'),
  }),
  chosenRule,
]
