import type { CaseInput, PublishedCase } from '../module.ts'

const das = 'B. M. Das, Principles of Foundation Engineering, braced cut'
const alone: Readonly<Record<string, CaseInput>> = { surcharge: '0 kPa', water_depth: '20 m' }

const stiff: Readonly<Record<string, CaseInput>> = {
  ...alone,
  ground: 'stiff clay',
  depth: '7 m',
  gamma: '18 kN/m^3',
  c: '35 kPa',
  top_strut: '1 m',
  struts: [{ z: '3.5 m' }, { z: '6 m' }],
  spacing: '3 m',
}

/** Cases of `braced-pit`; those of Das are recalled and were recomputed. */
export const bracedPitCases: readonly PublishedCase[] = [
  {
    id: 'bra-1',
    source: `${das} in clay of 35 kPa, 7 m deep`,
    status: 'memory',
    says: 'stiff clay, three struts: struts and wall by the hinges; his waler of 101.7 kN·m stands under the middle strut by the hinges',
    inputs: stiff,
    answers: {
      p_e: '37.8 kPa',
      R_u_1: '54.02 kN/m',
      R_l_1: '45.2 kN/m',
      N_s_row_1: '162.06 kN',
      N_s_row_2: '271.2 kN',
      N_low: '162.06 kN',
      M_wall: '27.03 kN*m/m',
    },
    tolerance: { relative: 0.001 },
  },
  {
    id: 'bra-2',
    source: `${das} in sand, 9 m deep; the depths of the struts were inferred from the recalled moments`,
    status: 'memory',
    says: 'sand, three struts',
    inputs: {
      ...alone,
      ground: 'sand',
      depth: '9 m',
      gamma: '17 kN/m^3',
      phi: '35 deg',
      top_strut: '2 m',
      struts: [{ z: '5 m' }, { z: '8 m' }],
      spacing: '4 m',
    },
    answers: { p_e: '26.95 kPa', N_s_row_1: '449.16 kN', N_s_row_2: '233.56 kN', N_low: '287.48 kN' },
    tolerance: { relative: 0.001 },
  },
  {
    id: 'bra-3',
    source: 'Peck 1969, equations by hand: the larger of 18 × 10 - 4 × 25 and 0.3 × 18 × 10; 80 × (10 - 10 / 8)',
    status: 'computed',
    says: 'soft to medium clay: full pressure and load of the envelope',
    inputs: {
      ...alone,
      ground: 'soft to medium clay',
      depth: '10 m',
      gamma: '18 kN/m^3',
      c: '25 kPa',
      top_strut: '1 m',
      struts: [{ z: '4 m' }, { z: '7 m' }],
      spacing: '3 m',
    },
    answers: { p_e: '80 kPa', P_d: '700 kN/m' },
    tolerance: { relative: 1e-9 },
  },
  {
    id: 'bra-4',
    source:
      'The same cut by tributary area, FHWA GEC 4, by hand: 37.8 × (2.25 - 7 / 8); 37.8 × 2.5; what is left of 37.8 × 5.25; three times each; a waler under 94.5',
    status: 'computed',
    says: 'stiff clay, three struts: the middle one bears more by its share of the height',
    inputs: stiff,
    answers: {
      N_share_1: '155.925 kN',
      N_share_2: '283.5 kN',
      N_share_low: '155.925 kN',
      N_max: '283.5 kN',
      M_waler: '106.3125 kN*m',
    },
    tolerance: { relative: 1e-9 },
  },
]
