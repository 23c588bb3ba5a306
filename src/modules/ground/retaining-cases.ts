import type { CaseInput, PublishedCase } from '../module.ts'

const das = 'B. M. Das, Principles of Foundation Engineering, cantilever retaining wall with sloping fill'
const wall: Readonly<Record<string, CaseInput>> = {
  stem: '6 m',
  stem_top: '0.5 m',
  stem_foot: '0.7 m',
  base: '0.7 m',
  toe: '0.7 m',
  heel: '2.6 m',
  gamma_c: '23.58 kN/m^3',
  gamma: '18 kN/m^3',
  gamma_sat: '20 kN/m^3',
  phi: '30 deg',
  alpha: '10 deg',
  // The book reads the coefficient from its table.
  K_given: '0.350',
  surcharge: '0 kPa',
  water: '0 m',
  delta_b: '2 / 3 * 20 deg',
  c_a: '2 / 3 * 40 kPa',
  front: 'force given',
  passive: '215 kN/m',
  overall: 'not checked',
  q_ult: '574.07 kPa',
}

/** Published cases of `retaining-stability`. */
export const retainingCases: readonly PublishedCase[] = [
  {
    id: 'wal-1',
    source: `${das}, forces and overturning`,
    status: 'memory',
    says: 'weights, earth force and moments',
    inputs: wall,
    answers: {
      h_p: '7.158 m',
      P_h: '158.95 kN/m',
      P_v: '28.03 kN/m',
      W_s: '70.74 kN/m',
      W_t: '14.15 kN/m',
      W_b: '66.02 kN/m',
      W_f: '280.80 kN/m',
      V_b: '470.45 kN/m',
      M_R: '1128.98 kN*m/m',
      M_O: '379.25 kN*m/m',
    },
    tolerance: { relative: 0.001 },
  },
  {
    id: 'wal-1f',
    source: `${das}, overturning`,
    status: 'memory',
    says: 'the factor against overturning',
    inputs: wall,
    answers: { F_o: '2.98' },
  },
  {
    id: 'wal-2',
    source: `${das}, sliding and pressure on the ground`,
    status: 'memory',
    says: 'two thirds of friction and cohesion of the ground, and 215 kN/m in front',
    inputs: wall,
    answers: { F_s: '2.73', e: '0.406 m', q_max: '189.2 kPa', q_min: '45.99 kPa' },
    tolerance: { relative: 0.003 },
  },
  {
    id: 'wal-3',
    source: `${das}, bearing`,
    status: 'memory',
    says: 'factor on the bearing resistance of 574.07 kPa that the book finds',
    inputs: wall,
    answers: { F_b: '3.03' },
    tolerance: { relative: 0.003 },
  },
]
