import type { Second, Step } from '../module.ts'
import type { Table } from '../table.ts'
import { limit, look, step, when } from '../words.ts'
import { wallEdge } from './wall-plate-edges.ts'
import { baseTriangular, baseUniform, sideTriangular, sideUniform } from './wall-plate-tables.ts'

const moment = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
const baseFixed = wallEdge('base', ['fixed'])
const sidesFixed = wallEdge('sides', ['fixed'])

const byTable = (name: 'b' | 's', at: string, [triangular, uniform]: readonly [Table, Table]): readonly Step[] => [
  look(`t_${name}`, triangular, { row: 'edges', column: 'r', says: `${at}, triangular part` }),
  look(`u_${name}`, uniform, { row: 'edges', column: 'r', says: `${at}, uniform part` }),
  step(`M_${name}_t`, `(t_${name} * (q_b - q_t) + u_${name} * q_t) * height^2`, {
    says: `moment ${at}, by the tables`,
    unit: moment,
  }),
]

/** The moments at base and sides again, by tables of such walls. */
export const wallPlateSecond: Second = {
  title: 'Tables of walls as plates',
  says: 'The pressure is parted into a uniform and a triangular part, and the coefficients of each are read from a table of walls with these edges, made apart from this program with other shapes, straight between its ratios.',
  limits: [
    limit('r >= 0.5', {
      says: 'the table begins where the wall is half as wide as high',
      otherwise: 'refuse',
      on: 'width',
    }),
    limit('r <= 3', {
      says: 'the table ends where the wall is three times as wide as high',
      otherwise: 'refuse',
      on: 'width',
    }),
  ],
  steps: [
    when(baseFixed, { yes: byTable('b', 'at the base, mid-width', [baseTriangular, baseUniform]) }),
    when(sidesFixed, { yes: byTable('s', 'at a side, mid-height', [sideTriangular, sideUniform]) }),
  ],
  compare: [
    {
      first: 'M_base',
      second: 'M_b_t',
      band: 0.12,
      says: 'straight between the ratios of the table: up to 12 % off where the moment follows a curve',
      when: baseFixed,
    },
    {
      first: 'M_mid',
      second: 'M_s_t',
      band: 0.12,
      says: 'straight between the ratios of the table: up to 12 % off where the moment follows a curve',
      when: sidesFixed,
    },
  ],
}
