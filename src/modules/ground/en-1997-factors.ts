import { cite } from '../sources.ts'
import { table } from '../table.ts'

/** Design approaches of EN 1997-1 for a spread foundation, with the sets of factors that they take. */
export const designApproaches = {
  'DA1-1': 'Design Approach 1, combination 1: loads by set A1, ground by M1, resistance by R1',
  'DA1-2': 'Design Approach 1, combination 2: loads by set A2, ground by M2, resistance by R1',
  DA2: 'Design Approach 2: loads by set A1, ground by M1, resistance by R2',
  DA3: 'Design Approach 3: loads by set A1 or A2, ground by M2, resistance by R3',
} as const

const row = { kind: 'words', says: 'design approach', keys: Object.keys(designApproaches) } as const
const status = 'recommended values from memory; the national annex decides'

/** Partial factor on the tangent of the effective friction and on the effective cohesion. */
export const factorOnFriction = table(
  {
    title: 'Partial factor on friction and effective cohesion',
    source: cite('en-1997-1', 'Table A.4'),
    status,
    unit: '',
    row,
  },
  `
  1.0
  1.25
  1.0
  1.25
  `,
)

/** Partial factor on the undrained shear strength. */
export const factorOnUndrained = table(
  {
    title: 'Partial factor on undrained shear strength',
    source: cite('en-1997-1', 'Table A.4'),
    status,
    unit: '',
    row,
  },
  `
  1.0
  1.4
  1.0
  1.4
  `,
)

/** Partial factor on the bearing resistance. */
export const factorOnBearing = table(
  { title: 'Partial factor on bearing resistance', source: cite('en-1997-1', 'Table A.5'), status, unit: '', row },
  `
  1.0
  1.0
  1.4
  1.0
  `,
)
