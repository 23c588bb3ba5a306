import { cite } from '../sources.ts'
import { quantity, ratio } from '../words.ts'

/** Cylinder strength by EN 1992-1-1, from C12 up to `most`. */
export const cylinderStrength = (most: string) =>
  quantity('stress', {
    says: 'characteristic cylinder strength of the concrete at 28 days',
    note: 'Of cylinders: the first number of C30/37, 30 MPa. The second is that of cubes of the same concrete and must not be entered',
    unit: { SI: 'MPa', US: 'psi' },
    least: '12 MPa',
    most,
    source: cite('en-1992-1-1', 'Table 3.1'),
  })

/** Characteristic strength of ribbed bars by EN 1992-1-1. */
export const ribbedStrength = (says = 'characteristic yield strength of the bars, ribbed') =>
  quantity('stress', {
    says,
    unit: { SI: 'MPa', US: 'psi' },
    least: '400 MPa',
    most: '600 MPa',
    source: cite('en-1992-1-1', '3.2.2(3)'),
  })

/** Partial factor and long-term factor of the concrete. */
export const concreteFactors = {
  gamma_c: ratio({
    says: 'partial factor of concrete',
    symbol: 'gamma_C',
    least: '1',
    most: '1.5',
    default: '1.5',
    source: cite('en-1992-1-1', 'Table 2.1N'),
  }),
  alpha_cc: ratio({
    says: 'factor for long-term strength',
    note: 'The standard recommends 1; several national annexes take 0.85, which is safe everywhere',
    symbol: 'alpha_cc',
    least: '0.8',
    most: '1',
    default: '0.85',
    source: cite('en-1992-1-1', '3.1.6(1), national annexes'),
  }),
} as const
