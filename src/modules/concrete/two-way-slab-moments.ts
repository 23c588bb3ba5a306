import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { look, step, when } from '../words.ts'
import { longMidspan, longSupport, shortMidspan, shortSupport } from './is456-table-26.ts'
import { liftingLong, liftingShort } from './is456-table-27.ts'
import { continuous, cornerTable } from './panel-edges.ts'

const moment = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
const span = { SI: 'm', US: 'ft' }
const byTable26 = cite('is-456', 'Annex D, D-1.1')
const byTable27 = cite('is-456', 'Annex D, D-2.1')

const noSupport = (name: string, says: string): Step => step(name, '0 * load * short_span^2', { says, unit: moment })

const supportMoments: readonly Step[] = [
  when(continuous('long', [1, 2]), {
    says: 'the slab runs on over a long edge',
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
    no: [noSupport('M_x_sup', 'no long edge is continuous: the table has no hogging moment in the short span')],
  }),
  when(continuous('short', [1, 2]), {
    says: 'the slab runs on over a short edge',
    yes: [
      look('alpha_y_sup', longSupport, { row: 'edges', says: 'coefficient of the hogging moment, long span' }),
      step('M_y_sup', 'alpha_y_sup * load * short_span^2', {
        says: 'hogging moment at the continuous short edge; the short span is squared here too',
        unit: moment,
        source: byTable26,
      }),
    ],
    no: [noSupport('M_y_sup', 'no short edge is continuous: the table has no hogging moment in the long span')],
  }),
]

const detailing: readonly Step[] = [
  step('b_x', '3/4 * long_span', {
    says: 'width of the middle strip whose bars lie along the short span; the two edge strips take least steel',
    unit: span,
    source: cite('is-456', 'Annex D, D-1.2, D-1.7'),
  }),
  step('b_y', '3/4 * short_span', {
    says: 'width of the middle strip whose bars lie along the long span',
    unit: span,
    source: cite('is-456', 'Annex D, D-1.2'),
  }),
  when(
    { formula: 'n_d > 0' },
    {
      says: 'some edges are discontinuous',
      yes: [
        step('k_top', '1/2', {
          says: 'top steel at a discontinuous edge, as part of the midspan steel of that direction',
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
  look('n_two', cornerTable('Corners where two discontinuous edges meet', 2), {
    row: 'edges',
    says: 'corners where both edges are discontinuous',
  }),
  look('n_one', cornerTable('Corners with one discontinuous edge', 1), {
    row: 'edges',
    says: 'corners where one edge is discontinuous',
  }),
  when(
    { formula: 'n_two > 0' },
    {
      says: 'two discontinuous edges meet at a corner',
      yes: [
        step('c_two', '3/4', {
          says: 'steel in each of four layers (two at the top, two at the bottom) at such a corner, as part of the midspan steel of the short span',
          source: cite('is-456', 'Annex D, D-1.8'),
        }),
      ],
      no: [step('c_two', '0', { says: 'no such corner' })],
    },
  ),
  when(
    { formula: 'n_one > 0' },
    {
      says: 'one discontinuous edge meets a continuous one at a corner',
      yes: [
        step('c_one', '1/2 * 3/4', {
          says: 'steel in each of the four layers at such a corner, as part of the midspan steel of the short span',
          source: cite('is-456', 'Annex D, D-1.9'),
        }),
      ],
      no: [step('c_one', '0', { says: 'no such corner; none is needed where both edges are continuous' })],
    },
  ),
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
    says: 'sagging moment at midspan, long span; the short span is squared here too',
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
    says: 'closed form of the table: crossing strips that sag alike (Rankine and Grashof)',
    source: cite('statics'),
  }),
  step('alpha_y_form', 'r^2 / (8 * (1 + r^4))', { says: 'closed form, long span', source: cite('statics') }),
  step('M_x_mid', 'alpha_x_mid * load * short_span^2', {
    says: 'sagging moment at midspan, short span',
    unit: moment,
    source: byTable27,
  }),
  step('M_y_mid', 'alpha_y_mid * load * short_span^2', {
    says: 'sagging moment at midspan, long span; the short span is squared here too',
    unit: moment,
    source: byTable27,
  }),
  noSupport('M_x_sup', 'no hogging moment: the slab is simply supported'),
  noSupport('M_y_sup', 'no hogging moment: the slab is simply supported'),
  step('c_two', '0', { says: 'corners that are free to lift take no corner steel' }),
  step('c_one', '0', { says: 'corners that are free to lift take no corner steel' }),
]

/** How far each table reaches: a ratio and the edges it speaks of. */
export const reachSteps: readonly Step[] = [
  when(
    { choice: 'corners', is: ['held down'] },
    {
      says: 'Table 26, for corners held down, sets the reach',
      yes: [
        step('r_most', '2', {
          says: 'largest ratio of spans in Table 26',
          source: cite('is-456', 'Annex D, Table 26, D-1.11'),
        }),
        step('n_least', '0', { says: 'Table 26 has panels with any number of discontinuous edges' }),
      ],
      no: [
        step('r_most', '3', {
          says: 'largest ratio of spans in Table 27',
          source: cite('is-456', 'Annex D, Table 27'),
        }),
        step('n_least', '4', {
          says: 'Table 27 is for slabs simply supported on all four sides',
          source: cite('is-456', 'Annex D, D-2.1'),
        }),
      ],
    },
  ),
]

/** The four moments, the strips and the corner steel, by the table that the corners ask for. */
export const momentSteps: readonly Step[] = [
  when(
    { choice: 'corners', is: ['held down'] },
    { says: 'the corners are held down: Table 26', yes: heldDown, no: freeToLift },
  ),
]
