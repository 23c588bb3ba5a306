import type { Input } from '../module.ts'
import { choice, length, quantity, ratio } from '../words.ts'
import { concreteFactors, cylinderStrength } from './en1992-concrete.ts'

const size = { SI: 'mm', US: 'in' }

/** Where the load stands; each word has its factor for uneven shear. */
export const placeWords = {
  'inside, no moment': 'jack, prop, sole plate, wheel or machine, away from the edges of the slab',
  inside: 'column or end of a wall cast with the slab, away from its edges',
  edge: 'load or column near one free edge',
  corner: 'load or column near two free edges',
} as const

const side = (says: string, symbol: string): Input =>
  length({ says, symbol, unit: size, above: '0 mm', usual: ['100 mm', '2 m'] })

const toEdge = (says: string, symbol: string, is: readonly string[]): Input =>
  length({
    says,
    note: 'From the face of the loaded area; nil where it is flush with the edge, which is safe',
    symbol,
    unit: size,
    least: '0 mm',
    default: '0 mm',
    when: { choice: 'place', is },
  })

const depth = (says: string, symbol: string): Input =>
  length({ says, symbol, unit: size, above: '0 mm', usual: ['75 mm', '950 mm'] })

const steel = (says: string, symbol: string): Input =>
  ratio({
    says,
    note: 'Mean over the loaded area and three depths on either side. From a flexure block take its steel ratio',
    symbol,
    unit: { SI: 'percent', US: 'percent' },
    above: '0',
    most: '0.06',
    usual: ['0.001', '0.03'],
  })

/** Load, loaded area, its place, and the slab under it. */
export const punchingInputs = {
  load: quantity('force', {
    says: 'factored load on the loaded area',
    symbol: 'F_Ed',
    unit: { SI: 'kN', US: 'kip' },
    least: '0 kN',
  }),
  place: choice({ says: 'where the load stands', words: placeWords }),
  side_1: side('side of the loaded area; across the edge, where there is one', 'c_1'),
  side_2: side('the other side of the loaded area', 'c_2'),
  edge_1: toEdge('distance to the free edge, across side 1', 'a_e1', ['edge', 'corner']),
  edge_2: toEdge('distance to the other free edge, across side 2', 'a_e2', ['corner']),
  depth_1: depth('effective depth to the bars along side 1', 'd_1'),
  depth_2: depth('effective depth to the bars along side 2', 'd_2'),
  steel_1: steel('steel in tension along side 1, over the effective section', 'rho_l1'),
  steel_2: steel('steel in tension along side 2, over the effective section', 'rho_l2'),
  f_ck: cylinderStrength('90 MPa'),
  ...concreteFactors,
} as const
