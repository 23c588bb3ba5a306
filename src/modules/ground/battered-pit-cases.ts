import type { PublishedCase } from '../module.ts'

const square = { plan_length: '6 m', plan_width: '4 m', working_space: '0 m', swell: '0.25', shrinkage: '0.1' }
const table =
  '29 CFR 1926 Subpart P App. B, Table B-1, angle beside the slope as printed to the whole degree; read on a page that restates the table (34) or from memory (45, 53, 63)'

/** Published and worked cases of `battered-pit`. */
export const batteredPitCases: readonly PublishedCase[] = [
  {
    id: 'bat-1',
    source: 'Prismoidal rule, worked by hand: `5/6 * (24 + 4 * 99 + 224)`',
    status: 'computed',
    says: 'base 6 by 4 m, 5 m deep, sides 1:1',
    inputs: { ...square, soil: 'type B', depth: '5 m' },
    answers: { top_length: '16 m', top_width: '14 m', V_dig: '536.667 m^3' },
    tolerance: { relative: 1e-5 },
  },
  {
    id: 'bat-2-c',
    source: table,
    status: 'looked up',
    says: 'angle of the slope of type C',
    inputs: { ...square, soil: 'type C', depth: '5 m' },
    answers: { slope: '1.5', batter_angle: '34 deg' },
  },
  {
    id: 'bat-2-b',
    source: table,
    status: 'memory',
    says: 'angle of the slope of type B',
    inputs: { ...square, soil: 'type B', depth: '5 m' },
    answers: { batter_angle: '45 deg' },
  },
  {
    id: 'bat-2-a',
    source: table,
    status: 'memory',
    says: 'angle of the slope of type A',
    inputs: { ...square, soil: 'type A', depth: '5 m' },
    answers: { batter_angle: '53 deg' },
  },
  {
    id: 'bat-2-short',
    source: table,
    status: 'memory',
    says: 'angle of the short-term slope of type A',
    inputs: { ...square, soil: 'type A short term', depth: '3 m' },
    answers: { batter_angle: '63 deg' },
  },
]
