import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { ratio, solve, step, when } from '../words.ts'
import { continuous, type PanelEdges } from './panel-edges.ts'
import { twoWaySlabPlate } from './two-way-slab-plate.ts'

const moment = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
const ratioOf = (name: string, says: string, symbol: string) => ({ dimension: 'ratio', name, says, symbol })

/** A direction of a panel: the edges that end its strips, its letter, its span in words. */
export interface Direction {
  readonly kind: keyof PanelEdges
  readonly axis: 'x' | 'y'
  readonly span: string
}

/** The short span and the long one. */
export const directions: readonly Direction[] = [
  { kind: 'long', axis: 'x', span: 'short span' },
  { kind: 'short', axis: 'y', span: 'long span' },
]

/** Poisson's ratio, as `plateSteps` take it. */
export const platePoisson = ratio({
  says: "Poisson's ratio of the elastic plate",
  note: 'Of the second method only: 0 to compare with the table, 0.2 for concrete',
  symbol: 'nu',
  least: '0',
  most: '0.3',
  default: '0',
})

/** The panel as an elastic plate: takes the ratio `r` of long to short span, `poisson`, `load` and `short_span`. */
export const plateSteps: readonly Step[] = [
  solve(twoWaySlabPlate, {
    takes: { ratio: 'r', nu: 'poisson' },
    words: { edges: { choice: 'edges' } },
    gives: {
      x_mid: ratioOf('c_x', 'largest sagging moment, short span, as a coefficient', 'c_x'),
      y_mid: ratioOf('c_y', 'largest sagging moment, long span, as a coefficient', 'c_y'),
      x_peak: ratioOf('c_x_peak', 'largest hogging moment at a long edge, as a coefficient', 'c_x_peak'),
      y_peak: ratioOf('c_y_peak', 'largest hogging moment at a short edge, as a coefficient', 'c_y_peak'),
      x_strip: ratioOf('c_x_sup', 'the same, mean over the middle strip of a long edge', 'c_x_sup'),
      y_strip: ratioOf('c_y_sup', 'the same, mean over the middle strip of a short edge', 'c_y_sup'),
      v: ratioOf('c_v', 'largest reaction of an edge, as a coefficient', 'c_v'),
    },
    says: 'the panel as an elastic plate with its true edges',
    source: cite('timoshenko', 'ch. 5 and 6'),
  }),
  ...directions.flatMap(({ kind, axis, span: along }) => [
    step(`M_${axis}_el`, `c_${axis} * load * short_span^2`, {
      says: `elastic sagging moment, ${along}`,
      unit: moment,
    }),
    step(`M_${axis}_peak`, `c_${axis}_peak * load * short_span^2`, {
      says: `largest elastic hogging moment at a ${kind} edge`,
      unit: moment,
    }),
  ]),
  step('V_el', 'c_v * load * short_span', {
    says: 'largest elastic edge reaction',
    unit: { SI: 'kN/m', US: 'plf' },
  }),
]

/** Sagging moment and the mean of the two hogging moments of a direction: what redistribution cannot change. */
export const stripTotal = ({ kind, axis, span: along }: Direction): Step => {
  const says = `sagging and mean end moment, ${along}`
  const lines = (end: (sup: string) => string) => [
    step(`M_${axis}_strip`, `M_${axis}_mid${end(`M_${axis}_sup`)}`, { says: `${says}, by the table`, unit: moment }),
    step(`M_${axis}_strip_el`, `(c_${axis}${end(`c_${axis}_sup`)}) * load * short_span^2`, {
      says: `${says}, elastic plate`,
      unit: moment,
    }),
  ]
  return when(continuous(kind, [2]), {
    yes: lines(sup => ` + ${sup}`),
    no: [
      when(continuous(kind, [1]), {
        yes: lines(sup => ` + ${sup} / 2`),
        no: lines(() => ''),
      }),
    ],
  })
}
