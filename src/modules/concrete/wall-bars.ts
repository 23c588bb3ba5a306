import type { Citation } from '../sources.ts'
import { type Table, table } from '../table.ts'

/** True of bars of a wall with a layer at each face. */
export const isWall = { choice: 'member', is: ['wall, vertical', 'wall, horizontal'] }

/** Least steel of walls by a code, upright bars and level ones, as parts of the gross section. */
export const wallSteel = (source: Citation, title: string, cells: string): Table =>
  table(
    {
      title,
      source,
      status: 'from memory of the standard',
      unit: '',
      row: { kind: 'words', says: 'bars of the wall', keys: isWall.is },
    },
    cells,
  )

export const wallRatio = { row: 'member', says: 'least steel of the wall, both faces, over the gross section' }
