import { defineModule, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { table } from '../table.ts'
import { check, choice, each, label, limit, list, look, quantity, step } from '../words.ts'
import { strength } from './bar-steps.ts'
import { cylinderStrength } from './en1992-concrete.ts'
import { strengthAgeCases } from './strength-age-cases.ts'
import { drawStrengthAge } from './strength-age-sketch.ts'

const en = (at: string) => cite('en-1992-1-1', at)
const days = { SI: 'day', US: 'day' }
const cements = {
  'class R': 'rapid: CEM 42.5 R, 52.5 N and 52.5 R',
  'class N': 'normal: CEM 32.5 R and 42.5 N',
  'class S': 'slow: CEM 32.5 N, and blends rich in slag or ash',
} as const

const cementFactor = table(
  {
    title: 'Coefficient of the cement',
    source: en('3.1.2(6)'),
    status: 'from memory of the standard',
    unit: '',
    row: { kind: 'words', says: 'class of the cement', keys: Object.keys(cements) },
  },
  '0.20 \n 0.25 \n 0.38',
)

const eachWork: readonly Step[] = [
  step('beta_need', '(strength_needed + 8 MPa) / f_cm', {
    says: 'part of the mean strength that is needed',
    symbol: 'beta_need',
    source: en('3.1.2(5)'),
  }),
  step('t_T_need', 'max((28 day) / (1 - log(beta_need) / s_c)^2, 3 day)', {
    says: 'adjusted age at which it is reached, not before three days',
    symbol: 't_T_need',
    unit: days,
    source: en('Eq. 3.2, solved for the age'),
  }),
  step('t_need', 't_T_need / k_T', { says: 'age of the concrete by then', unit: days, source: en('Eq. B.10') }),
  step('t_T', 'k_T * planned_age', {
    says: 'adjusted age when the work is planned',
    unit: days,
    source: en('Eq. B.10'),
  }),
  step('f_age', 'min(exp(s_c * (1 - sqrt((28 day) / t_T))) * f_cm - 8 MPa, f_ck)', {
    says: 'characteristic cylinder strength at that age',
    symbol: 'f_ck_t',
    unit: strength,
    source: en('3.1.2(5), Eq. 3.1 and 3.2'),
  }),
  check('old_enough', 'planned_age >= t_need', { says: 'age when the work is planned', source: en('3.1.2(6)') }),
]

/** Strength of concrete with age and temperature, and the age at which forms may be struck and fill placed. */
export const strengthAge = defineModule({
  id: 'strength-age',
  version: '1.0.0',
  title: 'Strength of concrete with age',
  asks: 'How old must the concrete be before forms are struck and fill is placed?',
  code: 'EN 1992-1-1',
  inputs: {
    f_ck: cylinderStrength('50 MPa'),
    cement: choice({ says: 'strength class of the cement', words: cements }),
    temperature: quantity('temperature', {
      says: 'mean temperature of the concrete until then',
      note: 'Of the concrete itself, taken low: what the night and the ground take away counts',
      symbol: 'T',
      unit: { SI: 'degC', US: 'degF' },
      least: '0 degC',
      most: '80 degC',
      usual: ['5 degC', '30 degC'],
      source: en('B.1(3)'),
    }),
    works: list('works that wait for strength', {
      least: 1,
      most: 12,
      fields: {
        work: label({ says: 'the work', optional: true }),
        strength_needed: quantity('stress', {
          says: 'characteristic cylinder strength needed for it',
          note: 'For a soffit twice the stress it gets at striking is an old rule, and 10 MPa a common floor; for fill against the walls the full strength of 28 days, with the roof in place',
          symbol: 'f_need',
          unit: strength,
          least: '2 MPa',
        }),
        planned_age: quantity('time', {
          says: 'age of the concrete when it is planned',
          symbol: 't_p',
          unit: days,
          above: '0 day',
          most: '365 day',
        }),
      },
    }),
  },
  steps: [
    step('f_cm', 'f_ck + 8 MPa', { says: 'mean strength at 28 days', unit: strength, source: en('Table 3.1') }),
    look('s_c', cementFactor, { row: 'cement', says: 'coefficient of the cement' }),
    step('k_T', 'exp(13.65 - 4000 / (273 + temperature / degC))', {
      says: 'age gained in a day, against a day at 20 °C',
      source: en('Eq. B.10'),
    }),
    each('works', eachWork),
  ],
  results: ['f_cm', 'k_T'],
  covers: ['striking'],
  drawing: ['f_ck', 'cement'],
  schedule: {
    title: 'Ages of the concrete before striking and filling',
    list: 'works',
    columns: ['work', 'strength_needed', 't_need', 'planned_age'],
  },
  limits: [
    limit('max(works.strength_needed) <= f_ck', {
      says: 'no work needs more than the strength of 28 days',
      advice: 'Later strength may not be counted on: choose stronger concrete',
      otherwise: 'refuse',
      on: 'works',
      source: en('3.1.2(5)'),
    }),
    limit('temperature >= 5 degC', {
      says: 'the concrete stays at 5 °C or warmer',
      advice: 'Young concrete that freezes is lost: keep it warm and measure',
      otherwise: 'warn',
      on: 'temperature',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'The age is an estimate, not a release: cubes kept beside the work, or temperatures logged in the concrete, decide on site.',
    'Before three days the standard gives no strength. Side forms that are struck earlier need tests or the limits of the specification.',
    'Striking a soffit also needs the props to stay, or the load on the young slab to be checked: soil and plant come later than striking.',
    'Fill goes up evenly on all sides, and not before the roof is cast and strong where it props the walls.',
    'Curing goes on after striking: concrete that dries out or freezes stops gaining strength.',
  ],
  sketch: drawStrengthAge,
  published: strengthAgeCases,
  example: {
    f_ck: '30 MPa',
    cement: 'class N',
    temperature: '10 degC',
    works: [
      { work: 'strike the wall forms', strength_needed: '10 MPa', planned_age: '6 day' },
      { work: 'strike the roof soffit', strength_needed: '20 MPa', planned_age: '14 day' },
      { work: 'place the fill', strength_needed: '30 MPa', planned_age: '56 day' },
    ],
  },
})
