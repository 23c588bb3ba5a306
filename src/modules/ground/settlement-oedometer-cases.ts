import type { PublishedCase } from '../module.ts'

const das = 'B. M. Das, Principles of Geotechnical Engineering, consolidation settlement of a clay layer'
// A base so wide that the 100 kPa reach the middle of the layer, under an overburden of 79.08 kPa there.
const wide = {
  width: '100 km',
  length: '100 km',
  depth: '2 m',
  gamma: '21.54 kN/m^3',
  gamma_sat: '21.54 kN/m^3',
  water_depth: '50 m',
  pressure: '143.08 kPa',
  s_allow: '1 m',
  heave: 'no time to swell',
} as const
const clay = { thickness: '4 m', gamma_layer: '18 kN/m^3', C_c: '0.27', C_r: '0.27 / 6', e_0: '0.8' } as const

const firm = { gamma_layer: '18 kN/m^3', C_c: '0.3', C_r: '0.05', e_0: '0.9' } as const
const swelling = {
  width: '6 m',
  length: '10 m',
  depth: '4 m',
  gamma: '18 kN/m^3',
  gamma_sat: '20 kN/m^3',
  water_depth: '1 m',
  pressure: '95 kPa',
  s_allow: '1 m',
  heave: 'swollen',
  layers: [
    { ...firm, thickness: '2 m', OCR: '1.1' },
    { ...firm, thickness: '4 m', sigma_p: '84 kPa' },
  ],
} as const

/** Published cases of `settlement-oedometer`. */
export const settlementOedometerCases: readonly PublishedCase[] = [
  {
    id: 'set-3',
    source: das,
    status: 'memory',
    says: 'normally consolidated: compression index 0.27, 4 m, void ratio 0.8, from 79.08 kPa by 100 kPa',
    inputs: { ...wide, layers: [clay] },
    answers: { s_0_1: '79.08 kPa', s_all: '213 mm' },
  },
  {
    id: 'set-4',
    source: das,
    status: 'memory',
    says: 'the same clay pressed by 200 kPa before, recompression index a sixth',
    inputs: { ...wide, layers: [{ ...clay, sigma_p: '200 kPa' }] },
    answers: { s_all: '36 mm' },
    tolerance: { units: 1 },
  },
  {
    id: 'set-4b',
    source: 'The same equations, worked by hand',
    status: 'computed',
    says: 'the same clay pressed by 170 kPa before: partly recompression, partly new',
    inputs: { ...wide, layers: [{ ...clay, sigma_p: '170 kPa' }] },
    answers: { s_all: '46.8 mm' },
    tolerance: { units: 1 },
  },
  {
    id: 'set-4o',
    source: das,
    status: 'memory',
    says: 'the same clay pressed by 200 kPa before, given as the ratio 200 / 79.08',
    inputs: { ...wide, layers: [{ ...clay, OCR: '200 / 79.08' }] },
    answers: { s_all: '36 mm' },
    tolerance: { units: 1 },
  },
  {
    id: 'set-6',
    source: 'Both branches of the oedometer curve from the swollen state, worked apart from this program',
    status: 'computed',
    says: 'raft of 6 by 10 m, 4 m deep, 95 kPa against 78 kPa before; the clay swells and yields again',
    inputs: swelling,
    answers: {
      s_open_1: '18.913 kPa',
      s_open_2: '60.514 kPa',
      s_1_1: '70.007 kPa',
      s_1_2: '88.616 kPa',
      s_re_1: '27.298 mm',
      s_new_1: '15.696 mm',
      s_re_2: '14.992 mm',
      s_new_2: '14.672 mm',
      s_all: '72.659 mm',
    },
  },
  {
    id: 'set-6b',
    source: 'The same, worked apart from this program',
    status: 'computed',
    says: 'the same raft with 70 kPa, less than it bore before: recompression alone',
    inputs: { ...swelling, pressure: '70 kPa' },
    answers: { p_net: '-8 kPa', s_layer_1: '22.461 mm' },
  },
]
