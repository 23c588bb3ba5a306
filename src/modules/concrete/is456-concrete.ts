import { cite } from '../sources.ts'
import { quantity } from '../words.ts'

/** Cube strength by IS 456, from M20 up to `most`. */
export const cubeStrength = (most: string) =>
  quantity('stress', {
    says: 'characteristic cube strength of the concrete at 28 days',
    note: 'Of cubes of 150 mm: M30 has 30 MPa. Cylinders of the same concrete have about a fifth less; a cylinder strength must not be entered as it is',
    unit: { SI: 'MPa', US: 'psi' },
    least: '20 MPa',
    most,
    source: cite('is-456', 'Table 2, Table 5'),
  })
