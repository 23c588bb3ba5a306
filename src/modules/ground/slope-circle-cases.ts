import type { PublishedCase } from '../module.ts'

const bare = { place: 'ground', water: 'none', crest: 'bare', crack: 'none', factor: '1' } as const
const taylor = (id: string, says: string, inputs: Record<string, string>, number: string): PublishedCase => ({
  id,
  source:
    'D. W. Taylor, Stability of earth slopes, 1937, and Fundamentals of Soil Mechanics, 1948: stability numbers of slopes in clay, friction nil',
  status: 'memory',
  says,
  inputs: { ...bare, slope_height: '10 m', strength: 'undrained', gamma: '20 kN/m^3', ...inputs },
  answers: { N_T: number },
  tolerance: { units: 1 },
})

/** Cases of `slope-circle`; Taylor's numbers were recalled, and recomputed by another search. */
export const slopeCircleCases: readonly PublishedCase[] = [
  {
    id: 'cir-1',
    source:
      'P. S. K. Giam and I. B. Donald, Example problems for testing soil slope stability programs, Monash University 1989, ACADS case 1(a): 1.00 by the referee, 0.99 by Bishop',
    status: 'memory',
    says: '10 m high at 1 on 2, 3 kPa, 19.6 degrees, 20 kN/m³, hard ground 5 m below the foot',
    inputs: {
      ...bare,
      slope_height: '10 m',
      slope: 'atan2(1, 2)',
      hard_depth: '5 m',
      strength: 'drained',
      phi: '19.6 deg',
      c: '3 kPa',
      gamma: '20 kN/m^3',
    },
    answers: { F_c: '0.99' },
  },
  {
    id: 'cir-2',
    source:
      'B. M. Das, Principles of Geotechnical Engineering, example with the stability coefficients of Bishop and Morgenstern 1960 for hard ground at the foot, 1.624 and 1.338',
    status: 'memory',
    says: '1 on 2, 25 degrees, cohesion a twentieth of weight by height, pore pressure a quarter of the weight: 1.624 - 1.338 / 4',
    inputs: {
      ...bare,
      slope_height: '12 m / 0.95',
      slope: 'atan2(1, 2)',
      hard_depth: '0 m',
      strength: 'drained',
      phi: '25 deg',
      c: '12 kPa',
      gamma: '19 kN/m^3',
      water: 'ratio',
      r_u: '0.25',
    },
    answers: { F_c: '1.29' },
  },
  taylor('cir-3-75', '75 degrees, on its toe circle', { slope: '75 deg', hard_depth: '0 m', c_u: '43.8 kPa' }, '0.219'),
  taylor('cir-3-60', '60 degrees, on its toe circle', { slope: '60 deg', hard_depth: '0 m', c_u: '38.2 kPa' }, '0.191'),
  taylor(
    'cir-3-30',
    '30 degrees, hard ground half the height below',
    { slope: '30 deg', hard_depth: '5 m', c_u: '32.8 kPa' },
    '0.164',
  ),
  taylor(
    'cir-3-30d',
    '30 degrees, hard ground the height below',
    { slope: '30 deg', hard_depth: '10 m', c_u: '34.4 kPa' },
    '0.172',
  ),
]
