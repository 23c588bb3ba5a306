import { cite } from '../sources.ts'
import { table } from '../table.ts'

/** Conductors of IEC 60228, in the order of the table's columns. */
export const iecConductors = {
  'plain copper, class 1 or 2': 'solid or stranded, for fixed wiring',
  'tinned copper, class 1 or 2': 'the same, each wire coated with metal',
  'plain copper, class 5 or 6': 'flexible',
  'tinned copper, class 5 or 6': 'flexible, each wire coated with metal',
  aluminium: 'solid or stranded, class 1 or 2',
} as const

/** Maximum resistance of a conductor at 20 degC, ohm/km, by nominal area and make. Only printed areas are allowed. */
export const iecResistance = table(
  {
    title: 'Maximum resistance of a conductor at 20 °C',
    source: cite('iec-60228', 'Tables 1 to 4'),
    status: 'looked up in four published reproductions, which agree',
    unit: 'ohm/km',
    row: {
      kind: 'numbers',
      says: 'nominal area in square millimetres',
      keys: ['0.5', '0.75', '1', '1.5', '2.5', '4', '6', '10', '16', '25', '35', '50', '70', '95', '120'],
      unit: 'mm^2',
      between: 'none',
    },
    column: { kind: 'words', says: 'conductor', keys: Object.keys(iecConductors) },
  },
  `
  36.0   36.7   39.0   40.1   -
  24.5   24.8   26.0   26.7   -
  18.1   18.2   19.5   20.0   -
  12.1   12.2   13.3   13.7   -
  7.41   7.56   7.98   8.21   -
  4.61   4.70   4.95   5.09   -
  3.08   3.11   3.30   3.39   -
  1.83   1.84   1.91   1.95   3.08
  1.15   1.16   1.21   1.24   1.91
  0.727  0.734  0.780  0.795  1.20
  0.524  0.529  0.554  0.565  0.868
  0.387  0.391  0.386  0.393  0.641
  0.268  0.270  0.272  0.277  0.443
  0.193  0.195  0.206  0.210  0.320
  0.153  0.154  0.161  0.164  0.253
  `,
)

/** Copper conductors by American wire gauge, and the area that the gauge defines. */
export const awgSizes = {
  'AWG 18': '0.823 mm²',
  'AWG 16': '1.31 mm²',
  'AWG 14': '2.08 mm²',
  'AWG 12': '3.31 mm²',
  'AWG 10': '5.26 mm²',
  'AWG 8': '8.37 mm²',
  'AWG 6': '13.3 mm²',
  'AWG 4': '21.2 mm²',
  'AWG 3': '26.7 mm²',
  'AWG 2': '33.6 mm²',
  'AWG 1': '42.4 mm²',
  'AWG 1/0': '53.5 mm²',
  'AWG 2/0': '67.4 mm²',
  'AWG 3/0': '85.0 mm²',
  'AWG 4/0': '107 mm²',
} as const

/** Solid or stranded. */
export const awgMakes = {
  solid: 'one wire, up to 8 gauge',
  stranded: 'several wires',
} as const

/** Resistance of uncoated copper at 75 degC, ohm per 1000 ft (which is milliohm per foot), by gauge and make. */
export const awgResistance = table(
  {
    title: 'Resistance of uncoated copper at 75 °C, direct current',
    source: cite('nec', 'Chapter 9, Table 8'),
    status: 'looked up in secondary tables, some of which mix solid and stranded; they are parted here',
    unit: 'mohm/ft',
    row: { kind: 'words', says: 'gauge', keys: Object.keys(awgSizes) },
    column: { kind: 'words', says: 'make', keys: Object.keys(awgMakes) },
  },
  `
  7.77   7.95
  4.89   4.99
  3.07   3.14
  1.93   1.98
  1.21   1.24
  0.764  0.778
  -      0.491
  -      0.308
  -      0.245
  -      0.194
  -      0.154
  -      0.122
  -      0.0967
  -      0.0766
  -      0.0608
  `,
)
