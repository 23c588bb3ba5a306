import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import type { Table } from '../table.ts'
import { check, look, step, when } from '../words.ts'
import { longDead, longLive, longNegative, shortDead, shortLive, shortNegative, shortShare } from './aci63-method3.ts'
import { continuous, type PanelEdges } from './panel-edges.ts'

const moment = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
const lineLoad = { SI: 'kN/m', US: 'plf' }
const source = cite('aci-318-63', 'Method 3')

interface Way {
  /** Letter of the names, and of the symbols in the method. */
  readonly axis: 'x' | 'y'
  readonly letter: 'a' | 'b'
  readonly edges: keyof PanelEdges
  readonly span: 'short_span' | 'long_span'
  readonly along: string
  readonly tables: Readonly<Record<'dead' | 'live' | 'negative', Table>>
}

const ways: readonly Way[] = [
  {
    axis: 'x',
    letter: 'a',
    edges: 'long',
    span: 'short_span',
    along: 'short span',
    tables: { dead: shortDead, live: shortLive, negative: shortNegative },
  },
  {
    axis: 'y',
    letter: 'b',
    edges: 'short',
    span: 'long_span',
    along: 'long span',
    tables: { dead: longDead, live: longLive, negative: longNegative },
  },
]

const hogging = ({ axis, letter, edges, span, along, tables }: Way): Step =>
  when(continuous(edges, [1, 2]), {
    yes: [
      look(`C_${letter}_neg`, tables.negative, {
        row: 'edges',
        column: 'm_s',
        says: `coefficient of the hogging moment, ${along}`,
      }),
      step(`M_${axis}_sup`, `C_${letter}_neg * load * ${span}^2`, {
        says: `hogging moment at the continuous ${edges} edge`,
        symbol: `M_${letter}_neg`,
        unit: moment,
        source,
      }),
    ],
    no: [
      step(`M_${axis}_sup`, '0 kN*m/m', {
        says: `hogging moment, ${along}: no ${edges} edge is continuous`,
        symbol: `M_${letter}_neg`,
        unit: moment,
      }),
    ],
  })

const sagging = ({ axis, letter, edges, span, along, tables }: Way): readonly Step[] => [
  look(`C_${letter}_d`, tables.dead, { row: 'edges', column: 'm_s', says: `coefficient of dead load, ${along}` }),
  look(`C_${letter}_l`, tables.live, { row: 'edges', column: 'm_s', says: `coefficient of live load, ${along}` }),
  step(`M_${axis}_mid`, `(C_${letter}_d * dead_load + C_${letter}_l * live_load) * ${span}^2`, {
    says: `sagging moment at midspan, ${along}`,
    symbol: `M_${letter}_pos`,
    unit: moment,
    source,
  }),
  when(continuous(edges, [0, 1]), {
    yes: [
      step(`M_${axis}_dis`, `M_${axis}_mid / 3`, {
        says: `hogging moment to allow for at a discontinuous ${edges} edge`,
        symbol: `M_${letter}_dis`,
        unit: moment,
        source,
      }),
    ],
  }),
]

/** Moments of both spans, each by its own square, and what the panel puts on its walls. */
export const method3Steps: readonly Step[] = [
  step('m_s', 'short_span / long_span', { says: 'short span over long span', symbol: 'm', source }),
  step('load', 'dead_load + live_load', {
    says: 'factored load',
    symbol: 'w_u',
    unit: { SI: 'kN/m^2', US: 'psf' },
  }),
  ...ways.flatMap(way => [hogging(way), ...sagging(way)]),
  look('W_a', shortShare, { row: 'edges', column: 'm_s', says: 'share of the load carried in the short span' }),
  step('V_long', 'W_a * load * short_span / 2', {
    says: 'shear and load on each long edge, its mean',
    symbol: 'V_a',
    unit: lineLoad,
    source,
  }),
  step('V_short', '(1 - W_a) * load * long_span / 2', {
    says: 'shear and load on each short edge, its mean',
    symbol: 'V_b',
    unit: lineLoad,
    source,
  }),
  check('load_carried', '2 * (V_long * long_span + V_short * short_span) == load * short_span * long_span', {
    says: 'the four edges carry the whole load',
    source: cite('statics'),
  }),
]
