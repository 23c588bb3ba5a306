import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

export const fuels = {
  diesel: 'diesel, no. 2',
  propane: 'propane, liquid under its own pressure',
} as const

const rows: Axis = { kind: 'words', says: 'fuel', keys: Object.keys(fuels) }
const looked = 'looked up in the table of fuel properties of the US Department of Energy'

/** Lower heating value by volume: never made from that by mass, for the table's rows are not one sample. */
export const heatingValue = table(
  {
    title: 'Lower heating value by volume',
    source: cite('fuel-properties'),
    status: looked,
    unit: 'Btu/gal',
    row: rows,
  },
  '128450\n84250',
)

/** The same of the other of the two fuels. */
export const otherHeatingValue = table(
  {
    title: 'Lower heating value by volume of the other fuel: propane for diesel, diesel for propane',
    source: cite('fuel-properties'),
    status: looked,
    unit: 'Btu/gal',
    row: rows,
  },
  '84250\n128450',
)

export const fuelDensity = table(
  {
    title: 'Density at 60 °F',
    source: cite('fuel-properties'),
    status: looked,
    unit: 'lb/gal',
    row: rows,
  },
  '7.079\n4.22',
)

export const airToBurn = table(
  {
    title: 'Mass of air that just burns a mass of fuel',
    source: cite('combustion'),
    status: 'propane from its formula; diesel the higher of common figures, 14.5 to 14.7',
    unit: '',
    row: rows,
  },
  '14.7\n15.7',
)

/** Use of diesel by sets of this power at this share of it. */
export const dieselChart = table(
  {
    title: 'Approximate use of diesel by size of set and load',
    source: cite('diesel-chart'),
    status: 'looked up, three reproductions agree; 75 kW at full load left out, for they do not; estimates only',
    unit: 'gal/hr',
    row: {
      kind: 'numbers',
      says: 'power of the set',
      keys: ['8', '10', '15', '20', '30', '40', '60', '75', '100'],
      unit: 'kW',
      between: 'linear',
    },
    column: {
      kind: 'numbers',
      says: 'load over the power of the set',
      keys: ['0.25', '0.5', '0.75', '1'],
      unit: '',
      between: 'linear',
    },
  },
  `
  -    0.39  0.54  0.69
  -    0.53  0.65  0.88
  -    0.69  0.94  1.22
  0.6  0.9   1.3   1.6
  1.3  1.8   2.4   2.9
  1.6  2.3   3.2   4.0
  1.8  2.9   3.8   4.8
  2.4  3.4   4.6   -
  2.6  4.1   5.8   7.4
  `,
)
