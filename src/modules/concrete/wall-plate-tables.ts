import { cite } from '../sources.ts'
import { type Axis, type Table, table } from '../table.ts'
import { wallWords } from './wall-plate-edges.ts'

const walls: Axis = { kind: 'words', says: 'edges of the wall', keys: Object.keys(wallWords) }
const ratios: Axis = {
  kind: 'numbers',
  says: 'width over height',
  keys: ['0.5', '0.75', '1', '2', '3'],
  unit: '',
  between: 'linear',
}

const coefficients = (title: string, text: string): Table =>
  table(
    {
      title,
      source: cite('wall-tables'),
      status: 'computed apart from this program; three entries agree with those remembered from print',
      unit: '',
      row: walls,
      column: ratios,
    },
    text,
  )

/** Moment at the base, mid-width, over p a^2, triangular load; blank where that edge is hinged. */
export const baseTriangular = coefficients(
  'Base at mid-width, vertical, triangular load',
  `
  -0.0115 -0.0226 -0.0350 -0.0860 -0.1269
  -0.0115 -0.0227 -0.0347 -0.0621 -0.0664
  -0.0115 -0.0226 -0.0334 -0.0497 -0.0502
  -0.0211 -0.0365 -0.0483 -0.0651 -0.0667
  -0.0213 -0.0388 -0.0571 -0.1157 -0.1445
  - - - - -
  - - - - -
  `,
)

/** Moment at the base, mid-width, over p a^2, uniform load; blank where that edge is hinged. */
export const baseUniform = coefficients(
  'Base at mid-width, vertical, uniform load',
  `
  -0.0142 -0.0320 -0.0565 -0.2059 -0.3511
  -0.0142 -0.0322 -0.0550 -0.1145 -0.1243
  -0.0142 -0.0318 -0.0513 -0.0828 -0.0837
  -0.0304 -0.0594 -0.0839 -0.1212 -0.1250
  -0.0312 -0.0691 -0.1177 -0.3085 -0.4142
  - - - - -
  - - - - -
  `,
)

/** Moment at the side, mid-height, over p a^2, triangular load; blank where that edge is hinged. */
export const sideTriangular = coefficients(
  'Side at mid-height, horizontal, triangular load',
  `
  -0.0104 -0.0206 -0.0298 -0.0496 -0.0547
  -0.0104 -0.0205 -0.0286 -0.0367 -0.0367
  -0.0104 -0.0197 -0.0257 -0.0285 -0.0284
  - - - - -
  - - - - -
  -0.0105 -0.0225 -0.0349 -0.0595 -0.0623
  -0.0105 -0.0226 -0.0362 -0.0895 -0.1401
  `,
)

/** Moment at the side, mid-height, over p a^2, uniform load; blank where that edge is hinged. */
export const sideUniform = coefficients(
  'Side at mid-height, horizontal, uniform load',
  `
  -0.0209 -0.0430 -0.0661 -0.1291 -0.1480
  -0.0209 -0.0422 -0.0600 -0.0784 -0.0786
  -0.0207 -0.0394 -0.0513 -0.0570 -0.0569
  - - - - -
  - - - - -
  -0.0211 -0.0450 -0.0698 -0.1191 -0.1246
  -0.0210 -0.0458 -0.0761 -0.2186 -0.3682
  `,
)
