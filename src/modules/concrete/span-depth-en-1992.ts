import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'
import { check, choice, limit, look, quantity, step, when } from '../words.ts'
import { cylinderStrength } from './en1992-concrete.ts'
import { spanDepthEn1992Cases } from './span-depth-en-1992-cases.ts'
import { depthAndSteel, spanDepthCautions, spanOfMember } from './span-depth-inputs.ts'

const stress = { SI: 'MPa', US: 'psi' }
const clause = (at: string) => cite('en-1992-1-1', at)

const supportWords = {
  cantilever: 'fixed at one end, free at the other',
  simple: 'turns freely at both ends',
  'end span': 'runs on over one support, turns at the other; also a panel that runs on over one long edge',
  'interior span': 'runs on over both supports',
} as const
const supports: Axis = { kind: 'words', says: 'how the member is held', keys: Object.keys(supportWords) }
const systemFactor = table(
  {
    title: 'Factor for the structural system',
    source: clause('Table 7.4N'),
    status: 'from memory of the standard',
    unit: '',
    row: supports,
  },
  '0.4 \n 1.0 \n 1.3 \n 1.5',
)

/** Whether a slab or wall is deep enough for its deflection, by EN 1992-1-1 7.4.2. */
export const spanDepthEn1992 = defineModule({
  id: 'span-depth-en-1992',
  version: '1.0.1',
  title: 'Deflection by span to depth, EN 1992',
  asks: 'Is this slab deep enough that its deflection need not be worked out?',
  code: 'EN 1992-1-1',
  inputs: {
    span: spanOfMember,
    support: choice({ says: 'how the member is held', words: supportWords }),
    f_ck: cylinderStrength('90 MPa'),
    f_yk: quantity('stress', {
      says: 'characteristic strength of the steel',
      unit: stress,
      least: '400 MPa',
      most: '600 MPa',
      source: clause('3.2.2(3)'),
    }),
    ...depthAndSteel('A_s'),
  },
  steps: [
    look('k_k', systemFactor, { row: 'support', says: 'factor for the structural system', symbol: 'K' }),
    step('rho', 'steel_required / (width * effective_depth)', { says: 'steel that strength asks for, as a ratio' }),
    step('q_c', 'sqrt(f_ck / (1 MPa))', { says: 'root of the strength' }),
    step('rho_0', 'q_c / 1000', { says: 'reference ratio', source: clause('7.4.2(2)') }),
    when(
      { formula: 'rho <= rho_0' },
      {
        says: 'the steel is at most the reference ratio',
        yes: [
          step('r_0', 'k_k * (11 + 1.5 * q_c * rho_0 / rho + 3.2 * q_c * sqrt((rho_0 / rho - 1)^3))', {
            says: 'basic ratio of span to effective depth',
            source: clause('7.16.a'),
          }),
        ],
        no: [
          step('r_0', 'k_k * (11 + 1.5 * q_c * rho_0 / rho)', {
            says: 'basic ratio, without steel in compression',
            source: clause('7.16.b'),
          }),
        ],
      },
    ),
    step('k_s', 'min(500 MPa / f_yk * steel_provided / steel_required, 1.5)', {
      says: 'factor for the stress of the steel, at most 1.5',
      symbol: 'k_sigma',
      source: clause('7.17'),
    }),
    step('r_all', 'r_0 * k_s', { says: 'allowed ratio of span to effective depth' }),
    step('d_min', 'span / r_all', { says: 'effective depth that would just do', unit: { SI: 'mm', US: 'in' } }),
    check('deflection', 'span / effective_depth <= r_all', {
      says: 'span over effective depth',
      source: clause('7.4.2(2)'),
    }),
  ],
  results: ['r_all', 'r_0', 'd_min', 'k_s', 'rho'],
  covers: ['deflection'],
  limits: [
    limit('steel_provided >= steel_required', {
      says: 'the steel provided is at least what strength asks for',
      otherwise: 'refuse',
      on: 'steel_provided',
    }),
    limit('rho <= 0.04', {
      says: 'the steel is at most 4 % of the section',
      otherwise: 'refuse',
      on: 'steel_required',
      source: clause('9.2.1.1(3)'),
    }),
    limit('r_0 <= 40 * k_k', {
      says: 'the basic ratio is at most 40 times the factor, as in built slabs',
      advice: 'With so little steel the formula runs away: judge the depth by practice',
      otherwise: 'warn',
      on: 'steel_required',
      source: cite('practice'),
    }),
    limit('span <= 7 m', {
      says: 'the span is at most 7 m, where brittle partitions do not count',
      advice: 'Where the slab carries brittle partitions, allow 7 m over the span of it only',
      otherwise: 'warn',
      on: 'span',
      source: clause('7.4.2(2)'),
    }),
  ],
  cautions: [
    ...spanDepthCautions,
    'The strength is that of cylinders. The limit of 1.5 on the factor for the stress of the steel is that of the British national annex; the standard itself names none.',
    'The depth found for the steel that a thinner section needs changes with the section: run it again.',
  ],
  published: spanDepthEn1992Cases,
  example: {
    span: '3.2 m',
    support: 'end span',
    f_ck: '30 MPa',
    f_yk: '500 MPa',
    effective_depth: '204 mm',
    steel_required: '610 mm^2',
    steel_provided: '754 mm^2',
  },
})
