import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

/** Reinforcement that the stress block of the code is printed for. */
export const steelWords = {
  'Fe 250': 'mild steel, characteristic strength 250 MPa',
  'Fe 415': 'high-strength deformed bars, 415 MPa',
  'Fe 500': 'high-strength deformed bars, 500 MPa',
} as const

const steels: Axis = { kind: 'words', says: 'grade of steel', keys: Object.keys(steelWords) }
const status = 'from memory of the standard'

/** Characteristic strength, MPa. */
export const yieldStrength = table(
  { title: 'Characteristic strength of steel', source: cite('is-456', 'cl. 38.1'), status, unit: 'MPa', row: steels },
  '250 \n 415 \n 500',
)

/** Greatest depth of the neutral axis over the effective depth. */
export const limitingAxis = table(
  {
    title: 'Limiting depth of the neutral axis, `x_max / d`',
    source: cite('is-456', 'cl. 38.1, note'),
    status,
    unit: '',
    row: steels,
  },
  '0.53 \n 0.48 \n 0.46',
)

/** Least steel of a slab over its gross section. */
export const leastSlabSteel = table(
  {
    title: 'Least reinforcement of slabs, part of the gross section',
    source: cite('is-456', 'cl. 26.5.2.1'),
    status,
    unit: '',
    row: steels,
  },
  '0.0015 \n 0.0012 \n 0.0012',
)
