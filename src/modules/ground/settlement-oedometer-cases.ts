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
} as const
const clay = { thickness: '4 m', gamma_layer: '18 kN/m^3', C_c: '0.27', C_r: '0.27 / 6', e_0: '0.8' } as const

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
]
