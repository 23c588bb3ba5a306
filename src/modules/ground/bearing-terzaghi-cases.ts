import type { PublishedCase } from '../module.ts'

const das = 'B. M. Das, Principles of Foundation Engineering'
const dry = { width: '1.5 m', depth: '1 m', pressure: '100 kPa', gamma_sat: '20 kN/m^3', water_depth: '20 m' } as const

/** Published cases of `bearing-terzaghi`. */
export const bearingTerzaghiCases: readonly PublishedCase[] = [
  {
    id: 'bea-1',
    source: `${das}, ultimate bearing capacity of a square foundation by Terzaghi`,
    status: 'memory',
    says: 'square of 1.5 m, 1 m deep, 20 degrees, cohesion 15.2 kPa, `17.8 kN/m^3`',
    inputs: { ...dry, shape: 'square', strength: 'drained', phi: '20 deg', c: '15.2 kPa', gamma: '17.8 kN/m^3' },
    answers: { q_gross: '521 kPa' },
  },
  {
    id: 'bea-1f',
    source: `${das}, table of Terzaghi's factors after Kumbhojkar 1993`,
    status: 'memory',
    says: 'factors at 30 degrees',
    inputs: { ...dry, shape: 'strip', strength: 'drained', phi: '30 deg', gamma: '18 kN/m^3' },
    answers: { N_c: '37.16', N_q: '22.46', N_gamma: '19.13' },
  },
  {
    id: 'bea-1u',
    source: 'Terzaghi 1943, clay without friction: 5.7 times the strength for a strip, 7.4 for a square',
    status: 'memory',
    says: 'square on clay of 10 kPa: 74 kPa net',
    inputs: { ...dry, shape: 'square', strength: 'undrained', c_u: '10 kPa', gamma: '18 kN/m^3' },
    answers: { q_net: '74 kPa' },
  },
]
