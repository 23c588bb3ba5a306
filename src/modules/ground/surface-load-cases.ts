import type { CaseInput, PublishedCase } from '../module.ts'

const das = 'B. M. Das, Principles of Geotechnical Engineering'
const craig = "R. F. Craig, Craig's Soil Mechanics"
const chapra = 'S. C. Chapra, numerical methods, Table P20.27 of influence factors, on a page that reprints the problem'

const one = (load: Readonly<Record<string, string>>, depth = '1 m'): Readonly<Record<string, CaseInput>> => ({
  depth,
  impact: '1',
  loads: [{ long: '1 m', wide: '1 m', ...load }],
})

/** 1000 kN as a point one metre down: the factor of Boussinesq in thousandths. */
const point = (ratio: string, printed: string): PublishedCase => ({
  id: `sur-1-${ratio}`,
  source: `${das}, table of Boussinesq's factor`,
  status: 'memory',
  says: `point load of 1000 kN, one metre down and ${ratio} m beside it`,
  inputs: one({ load: '1000 kN', x: `${ratio} m` }),
  answers: { sigma_point: `${printed} kPa` },
})

/** 1000 kPa on a rectangle, one metre below its corner: the factor in thousandths. */
const corner = (
  id: string,
  of: { m: number; n: number; printed: string },
  about: Pick<PublishedCase, 'source' | 'status'>,
): PublishedCase => ({
  id: `${id}-${of.m}-${of.n}`,
  ...about,
  says: `1000 kPa on ${of.m} m by ${of.n} m, one metre below its corner`,
  inputs: one({
    load: `${(1000 * of.m * of.n).toFixed(1)} kN`,
    long: `${of.m} m`,
    wide: `${of.n} m`,
    x: `${of.m / 2} m`,
    y: `${of.n / 2} m`,
  }),
  answers: { sigma_z: `${of.printed} kPa` },
})

const recalled = { source: `${das} and ${craig}, Newmark's factor`, status: 'memory' } as const
const read = { source: chapra, status: 'looked up' } as const

/** Published cases of `surface-load`. */
export const surfaceLoadCases: readonly PublishedCase[] = [
  point('0', '477.5'),
  point('0.5', '273.3'),
  point('1', '84.4'),
  point('2', '8.5'),
  corner('sur-2', { m: 1, n: 1, printed: '175.2' }, recalled),
  corner('sur-2', { m: 0.5, n: 0.5, printed: '84.0' }, recalled),
  corner('sur-2', { m: 2, n: 2, printed: '232.5' }, recalled),
  corner('sur-2', { m: 1, n: 2, printed: '199.9' }, recalled),
  corner('new', { m: 0.4, n: 1.2, printed: '106.31' }, read),
  corner('new', { m: 0.8, n: 1.4, printed: '173.89' }, read),
  {
    id: 'sur-3',
    source: `${craig}, 1500 kN on a square of 2 m, 5 m below its middle`,
    status: 'memory',
    says: 'as an area and as a point',
    inputs: one({ load: '1500 kN', long: '2 m', wide: '2 m' }, '5 m'),
    answers: { sigma_z: '27 kPa', sigma_point: '29 kPa' },
  },
  {
    id: 'sur-4',
    source: `${craig}, 300 kPa on 6 m by 3 m, 3 m down, 1.5 m outside the middle of a long edge`,
    status: 'memory',
    says: 'outside the loaded area: rectangles taken away',
    inputs: one({ load: '5400 kN', long: '6 m', wide: '3 m', y: '3 m' }, '3 m'),
    answers: { sigma_z: '44 kPa' },
  },
]
