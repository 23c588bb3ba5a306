import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { look, step, when } from '../words.ts'
import { longMidspan, longSupport, shortMidspan, shortSupport } from './is456-table-26.ts'
import { liftingLong, liftingShort } from './is456-table-27.ts'
import { continuous, withCorners } from './panel-edges.ts'

const moment = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
const span = { SI: 'm', US: 'ft' }
const byTable26 = cite('is-456', 'Annex D, D-1.1')
const byTable27 = cite('is-456', 'Annex D, D-2.1')

const noSupport = (name: string, says: string): Step => step(name, '0 kN*m/m', { says, unit: moment })
const noCorner = (name: string, says: string): Step => step(name, '0', { says })

const supportMoments: readonly Step[] = [
  when(continuous('long', [1, 2]), {
    yes: [
      look('alpha_x_sup', shortSupport, {
        row: 'edges',
        column: 'r',
        says: 'coefficient of the hogging moment, short span',
      }),
      step('M_x_sup', 'alpha_x_sup * load * short_span^2', {
        says: 'hogging moment at the continuous long edge',
        unit: moment,
        source: byTable26,
      }),
    ],
    no: [noSupport('M_x_sup', 'hogging moment, short span: no long edge is continuous')],
  }),
  when(continuous('short', [1, 2]), {
    yes: [
      look('alpha_y_sup', longSupport, { row: 'edges', says: 'coefficient of the hogging moment, long span' }),
      step('M_y_sup', 'alpha_y_sup * load * short_span^2', {
        says: 'hogging moment at the continuous short edge',
        unit: moment,
        source: byTable26,
      }),
    ],
    no: [noSupport('M_y_sup', 'hogging moment, long span: no short edge is continuous')],
  }),
]

const detailing: readonly Step[] = [
  step('b_x', '3/4 * long_span', {
    says: 'width of the middle strip, bars along the short span',
    unit: span,
    source: cite('is-456', 'Annex D, D-1.2, D-1.7'),
  }),
  step('b_y', '3/4 * short_span', {
    says: 'width of the middle strip, bars along the long span',
    unit: span,
    source: cite('is-456', 'Annex D, D-1.2'),
  }),
  when(
    { choice: 'edges', is: ['all continuous'] },
    {
      yes: [],
      no: [
        step('k_top', '1/2', {
          says: 'top steel at a discontinuous edge, as part of midspan steel',
          source: cite('is-456', 'Annex D, D-1.6'),
        }),
        step('x_top', '0.1 * short_span', {
          says: 'how far it reaches into the span from a long edge',
          unit: span,
          source: cite('is-456', 'Annex D, D-1.6'),
        }),
        step('y_top', '0.1 * long_span', {
          says: 'how far it reaches into the span from a short edge',
          unit: span,
          source: cite('is-456', 'Annex D, D-1.6'),
        }),
      ],
    },
  ),
]

const cornerSteel: readonly Step[] = [
  when(withCorners(2), {
    yes: [
      step('c_two', '3/4', {
        says: 'corner steel where two discontinuous edges meet, each layer',
        source: cite('is-456', 'Annex D, D-1.8'),
      }),
    ],
    no: [noCorner('c_two', 'no two discontinuous edges meet')],
  }),
  when(withCorners(1), {
    yes: [
      step('c_one', '(1/2) * (3/4)', {
        says: 'corner steel where only one edge is discontinuous, each layer',
        source: cite('is-456', 'Annex D, D-1.9'),
      }),
    ],
    no: [noCorner('c_one', 'no discontinuous edge meets a continuous one')],
  }),
  step('l_c', 'short_span / 5', {
    says: 'side of the square mesh at each corner that needs it',
    unit: span,
    source: cite('is-456', 'Annex D, D-1.8'),
  }),
]

const heldDown: readonly Step[] = [
  look('alpha_x_mid', shortMidspan, {
    row: 'edges',
    column: 'r',
    says: 'coefficient of the sagging moment, short span',
  }),
  step('M_x_mid', 'alpha_x_mid * load * short_span^2', {
    says: 'sagging moment at midspan, short span',
    unit: moment,
    source: byTable26,
  }),
  look('alpha_y_mid', longMidspan, { row: 'edges', says: 'coefficient of the sagging moment, long span' }),
  step('M_y_mid', 'alpha_y_mid * load * short_span^2', {
    says: 'sagging moment at midspan, long span',
    unit: moment,
    source: byTable26,
  }),
  ...supportMoments,
  ...detailing,
  ...cornerSteel,
]

const freeToLift: readonly Step[] = [
  look('alpha_x_mid', liftingShort, { row: 'r', says: 'coefficient of the sagging moment, short span' }),
  look('alpha_y_mid', liftingLong, { row: 'r', says: 'coefficient of the sagging moment, long span' }),
  step('alpha_x_form', 'r^4 / (8 * (1 + r^4))', {
    says: 'closed form of the table: crossing strips that sag alike',
    source: cite('statics'),
  }),
  step('alpha_y_form', 'r^2 / (8 * (1 + r^4))', { says: 'the same, long span', source: cite('statics') }),
  step('M_x_mid', 'alpha_x_mid * load * short_span^2', {
    says: 'sagging moment at midspan, short span',
    unit: moment,
    source: byTable27,
  }),
  step('M_y_mid', 'alpha_y_mid * load * short_span^2', {
    says: 'sagging moment at midspan, long span',
    unit: moment,
    source: byTable27,
  }),
  noSupport('M_x_sup', 'hogging moment, short span: simply supported'),
  noSupport('M_y_sup', 'hogging moment, long span: simply supported'),
  noCorner('c_two', 'corners that are free to lift take no corner steel'),
  noCorner('c_one', 'corners that are free to lift take no corner steel'),
]

/** The four moments, the strips and the corner steel, by the table that the corners ask for. */
export const momentSteps: readonly Step[] = [
  when({ choice: 'corners', is: ['held down'] }, { yes: heldDown, no: freeToLift }),
]
