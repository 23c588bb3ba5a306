import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'
import { check, choice, limit, look, step } from '../words.ts'
import { steelWords, yieldStrength } from './is456-steel.ts'
import { depthAndSteel, spanDepthCautions, spanOfMember } from './span-depth-inputs.ts'

const supportWords = {
  cantilever: 'fixed at one end, free at the other',
  simple: 'turns freely at both ends',
  continuous: 'runs on over a support, or is fixed',
} as const
const supports: Axis = { kind: 'words', says: 'how the member is held', keys: Object.keys(supportWords) }
const basicRatio = table(
  {
    title: 'Basic ratio of span to effective depth',
    source: cite('is-456', 'cl. 23.2.1 a)'),
    status: 'from memory of the standard',
    unit: '',
    row: supports,
  },
  '7 \n 20 \n 26',
)
const fig4 = cite('is-456', 'cl. 23.2.1 c), Fig. 4')

/** Whether a slab or wall is deep enough for its deflection, by IS 456 23.2.1. */
export const spanDepthIs456 = defineModule({
  id: 'span-depth-is-456',
  version: '1.0.1',
  title: 'Deflection by span to depth, IS 456',
  asks: 'Is this slab deep enough that its deflection need not be worked out?',
  code: 'IS 456:2000',
  inputs: {
    span: spanOfMember,
    support: choice({ says: 'how the member is held', words: supportWords }),
    steel: choice({ says: 'grade of the bars', words: steelWords }),
    ...depthAndSteel('A_st'),
  },
  steps: [
    look('r_b', basicRatio, { row: 'support', says: 'basic ratio' }),
    look('f_y', yieldStrength, {
      row: 'steel',
      says: 'characteristic strength of the steel',
      unit: { SI: 'MPa', US: 'psi' },
    }),
    step('f_s', '0.58 * f_y * steel_required / steel_provided', {
      says: 'stress of the steel in service',
      unit: { SI: 'MPa', US: 'psi' },
      source: cite('is-456', 'Fig. 4'),
    }),
    step('p_t', 'steel_provided / (width * effective_depth)', {
      says: 'steel over the effective section',
      unit: { SI: 'percent', US: 'percent' },
    }),
    step('k_n', '0.225 + 0.00322 * f_s / (1 MPa) + 0.625 * log10(100 * p_t)', {
      says: 'one over the factor for the steel, by the formula of the figure',
      source: cite('sp-24', 'cl. 22.2'),
    }),
    step('k_t', '1 / max(k_n, 0.5)', {
      says: 'factor for the steel in tension, at most 2',
      symbol: 'k_ten',
      source: fig4,
    }),
    step('k_l', 'min(10 m / span, 1)', {
      says: 'factor for a span over 10 m',
      source: cite('is-456', 'cl. 23.2.1 b)'),
    }),
    step('r_all', 'r_b * k_t * k_l', { says: 'allowed ratio of span to effective depth' }),
    step('d_min', 'span / r_all', { says: 'effective depth that would just do', unit: { SI: 'mm', US: 'in' } }),
    check('deflection', 'span / effective_depth <= r_all', {
      says: 'span over effective depth',
      source: cite('is-456', 'cl. 23.2.1'),
    }),
  ],
  results: ['r_all', 'd_min', 'k_t', 'f_s', 'p_t'],
  covers: ['deflection'],
  limits: [
    limit('p_t <= 3 percent', {
      says: 'the steel lies within the figure, at most 3 %',
      otherwise: 'refuse',
      on: 'steel_provided',
      source: cite('is-456', 'Fig. 4'),
    }),
    limit('f_s <= 290 MPa', {
      says: 'the stress in service lies within the figure',
      advice: 'The steel provided is less than strength asks for',
      otherwise: 'refuse',
      on: 'steel_provided',
      source: cite('is-456', 'Fig. 4'),
    }),
    limit('p_t >= 0.12 percent', {
      says: 'the steel is at least the least steel of a slab',
      otherwise: 'warn',
      on: 'steel_provided',
      source: cite('is-456', 'cl. 26.5.2.1'),
    }),
  ],
  cautions: [
    ...spanDepthCautions,
    'Steel in compression would raise the ratio a little; it is not counted. A cantilever longer than 10 m needs the deflection itself.',
  ],
  published: [
    {
      id: 'span-3',
      source: 'published design sheet to IS 456, Fig. 4: steel 0.322 %, stress `240 MPa`',
      status: 'looked up',
      says: 'factor for the steel in tension; the steel provided is chosen to give that stress',
      inputs: {
        span: '3 m',
        support: 'simple',
        steel: 'Fe 415',
        effective_depth: '100 mm',
        steel_required: '322 mm^2 * 240 / (0.58 * 415)',
        steel_provided: '322 mm^2',
      },
      answers: { k_t: '1.45', r_b: '20' },
    },
  ],
  example: {
    span: '3.2 m',
    support: 'continuous',
    steel: 'Fe 500',
    effective_depth: '204 mm',
    steel_required: '610 mm^2',
    steel_provided: '754 mm^2',
  },
})
