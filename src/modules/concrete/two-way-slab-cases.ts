import type { PublishedCase } from '../module.ts'

const sheet = 'published design sheet of a two-way slab by IS 456:2000, Table 26'

/** Coefficients and moments printed elsewhere. */
export const twoWaySlabCases: readonly PublishedCase[] = [
  {
    id: 'slab-15',
    source: `${sheet}, panel 4`,
    status: 'looked up',
    says: 'two adjacent edges discontinuous, ratio of spans 1.22',
    inputs: {
      short_span: '3 m',
      long_span: '1.22 * 3 m',
      load: '10 kN/m^2',
      edges: 'two adjacent edges discontinuous',
      corners: 'held down',
    },
    answers: { alpha_x_sup: '0.0610', alpha_x_mid: '0.0458', alpha_y_sup: '0.047', alpha_y_mid: '0.035' },
    tolerance: { units: 1 },
  },
  {
    id: 'slab-16',
    source: `${sheet}, panel 2`,
    status: 'looked up',
    says: 'one short edge discontinuous, ratio of spans 1.22',
    inputs: {
      short_span: '3 m',
      long_span: '1.22 * 3 m',
      load: '10 kN/m^2',
      edges: 'one short edge discontinuous',
      corners: 'held down',
    },
    answers: { alpha_x_sup: '0.0486', alpha_x_mid: '0.0366', alpha_y_sup: '0.037', alpha_y_mid: '0.028' },
    tolerance: { units: 1 },
  },
  {
    id: 'slab-17',
    source: `${sheet}, panel 8 (moments printed from rounded spans)`,
    status: 'looked up',
    says: 'one short edge continuous, load `8.8125 kN/m^2`, short span 3.6986 m, ratio of spans 1.06',
    inputs: {
      short_span: '3.6986 m',
      long_span: '1.06 * 3.6986 m',
      load: '8.8125 kN/m^2',
      edges: 'one short edge continuous',
      corners: 'held down',
    },
    answers: { alpha_x_mid: '0.0478', M_x_mid: '5.77 kN*m/m', M_y_mid: '5.19 kN*m/m', M_y_sup: '6.88 kN*m/m' },
    tolerance: { relative: 0.005 },
  },
  {
    id: 'slab-27',
    source: 'BS 8110-1:1997, Table 3.13 (the figures of IS 456:2000, Table 27)',
    status: 'looked up',
    says: 'simply supported on four sides, corners free to lift, ratio of spans 1.5',
    inputs: {
      short_span: '2 m',
      long_span: '3 m',
      load: '10 kN/m^2',
      edges: 'all discontinuous',
      corners: 'free to lift',
    },
    answers: { alpha_x_mid: '0.104', alpha_y_mid: '0.046' },
  },
]
