import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

const grades = (keys: readonly string[]): Axis => ({
  kind: 'numbers',
  says: 'cube strength of the concrete',
  keys,
  unit: 'MPa',
  between: 'linear',
})

/** Design shear strength of concrete, MPa, by steel and concrete. */
export const shearStrength = table(
  {
    title: 'Design shear strength of concrete',
    source: cite('is-456', 'Table 19'),
    status: 'M20 read in a published design sheet; M25 to M40 from memory, near the formula of SP 24',
    unit: 'MPa',
    row: {
      kind: 'numbers',
      says: 'steel in tension',
      keys: ['0.15', '0.25', '0.5', '0.75', '1', '1.25', '1.5', '1.75', '2', '2.25', '2.5', '2.75', '3'],
      unit: 'percent',
      between: 'linear',
    },
    column: grades(['20', '25', '30', '35', '40']),
  },
  `
  0.28 0.29 0.29 0.29 0.30
  0.36 0.36 0.37 0.37 0.38
  0.48 0.49 0.50 0.50 0.51
  0.56 0.57 0.59 0.59 0.60
  0.62 0.64 0.66 0.67 0.68
  0.67 0.70 0.71 0.73 0.74
  0.72 0.74 0.76 0.78 0.79
  0.75 0.78 0.80 0.82 0.84
  0.79 0.82 0.84 0.86 0.88
  0.81 0.85 0.88 0.90 0.92
  0.82 0.88 0.91 0.93 0.95
  0.82 0.90 0.94 0.96 0.98
  0.82 0.92 0.96 0.99 1.01
  `,
)

/** Greatest shear stress with shear steel, MPa; a slab may have half of it. */
export const greatestShear = table(
  {
    title: 'Maximum shear stress',
    source: cite('is-456', 'Table 20'),
    status: 'read in a published design sheet',
    unit: 'MPa',
    row: grades(['20', '25', '30', '35', '40']),
  },
  '2.8 \n 3.1 \n 3.5 \n 3.7 \n 4.0',
)

/** Factor on the shear strength of solid slabs by their overall depth. */
export const slabFactor = table(
  {
    title: 'Factor for solid slabs',
    source: cite('is-456', 'cl. 40.2.1.1'),
    status: 'read in a published design sheet',
    unit: '',
    row: {
      kind: 'numbers',
      says: 'overall depth of the slab',
      keys: ['150', '175', '200', '225', '250', '275', '300'],
      unit: 'mm',
      between: 'linear',
    },
  },
  '1.30 \n 1.25 \n 1.20 \n 1.15 \n 1.10 \n 1.05 \n 1.00',
)
