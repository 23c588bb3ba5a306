import { cite } from '../sources.ts'
import { table } from '../table.ts'

/** Ground of the pit's sides, as Appendix A of the standard classes it. */
export const pitSoils = {
  'stable rock': 'natural solid mineral matter that stays in place with vertical sides',
  'type A': 'stiff clay of 144 kPa (1.5 tsf) or more, unconfined; not fissured, not vibrated, not disturbed before',
  'type A short term': 'type A in a pit open for 24 hours or less and not deeper than 12 ft',
  'type B': 'clay of 48 to 144 kPa (0.5 to 1.5 tsf), angular gravel, silt; type A that is fissured or vibrated',
  'type C': 'clay of 48 kPa (0.5 tsf) or less, sand, rounded gravel, submerged soil or soil from which water seeps',
} as const

const soils = { kind: 'words', says: 'soil or rock type', keys: Object.keys(pitSoils) } as const

/** Steepest slope, horizontal for one vertical. */
export const steepestSlope = table(
  {
    title: 'Table B-1, maximum allowable slopes (horizontal for one vertical)',
    source: cite('osha-1926-p', 'App. B, Table B-1'),
    status:
      'slopes read on a page that restates the table, the short-term slope and its 12 ft from memory; compare with the regulation',
    unit: '',
    row: soils,
  },
  `
  0
  0.75
  0.5
  1
  1.5
  `,
)

/** Depth to which the slope may be used. */
export const deepestSlope = table(
  {
    title: 'Table B-1, depth to which the slopes serve',
    source: cite('osha-1926-p', 'App. B, Table B-1, notes 2 and 3'),
    status: 'the 20 ft read on a page that restates the table, the 12 ft from memory; compare with the regulation',
    unit: 'ft',
    row: soils,
  },
  `
  20
  20
  12
  20
  20
  `,
)
