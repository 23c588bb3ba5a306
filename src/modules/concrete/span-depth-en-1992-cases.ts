import type { PublishedCase } from '../module.ts'

/** Entries of Table 7.4N: C30, steel stress 310 MPa, steel 1.5 % and 0.5 %. */
const ofTable = (id: string, support: string, [much, little]: readonly [string, string]): readonly PublishedCase[] =>
  (
    [
      ['1.5 %', '3000 mm^2', much],
      ['0.5 %', '1000 mm^2', little],
    ] as const
  ).map(([ratio, steel, printed]) => ({
    id: `${id} ${ratio}`,
    source: 'EN 1992-1-1, Table 7.4N, C30 (printed in whole figures, mostly rounded down)',
    status: 'memory',
    says: `${support}, steel ${ratio}`,
    inputs: {
      span: '3 m',
      support,
      f_ck: '30 MPa',
      f_yk: '500 MPa',
      effective_depth: '200 mm',
      steel_required: steel,
      steel_provided: steel,
    },
    answers: { r_0: printed },
    tolerance: { units: 1 },
  }))

/** Both columns of the table for four structural systems. */
export const spanDepthEn1992Cases: readonly PublishedCase[] = [
  ...ofTable('span-1', 'simple', ['14', '20']),
  ...ofTable('span-2a', 'end span', ['18', '26']),
  ...ofTable('span-2b', 'interior span', ['20', '30']),
  ...ofTable('span-2c', 'cantilever', ['6', '8']),
]
