import type { PublishedCase } from '../module.ts'

const sand = { span: '3 m', gamma: '18 kN/m^3', phi: '30 deg', surcharge: '0 kPa' } as const
const marston = (id: string, [friction, cover, load]: readonly [string, string, string]): PublishedCase => ({
  id: `arc-1${id}`,
  source: 'M. G. Spangler and R. L. Handy, Soil Engineering, table of load coefficients of Marston for trenches',
  status: 'memory',
  says: `friction number ${friction}, depth over width ${cover}: ${load} of unit weight by width`,
  inputs: {
    span: '1 m',
    cover: `${cover} m`,
    gamma: '1 kN/m^3',
    phi: '30 deg',
    K_s: `${friction} / tan(30 deg)`,
    surcharge: '0 kPa',
  },
  answers: { p_arch: `${load} kPa` },
})

/** Published cases of `soil-arching`. */
export const soilArchingCases: readonly PublishedCase[] = [
  marston('a', ['0.1924', '1', '0.830']),
  marston('b', ['0.1924', '2', '1.395']),
  marston('c', ['0.130', '1', '0.881']),
  marston('d', ['0.130', '2', '1.560']),
  {
    id: 'arc-2',
    source: 'Equation of Terzaghi 1943, worked by hand',
    status: 'computed',
    says: 'strip of 3 m under 3 m of sand of `18 kN/m^3` and 30 degrees',
    inputs: { ...sand, cover: '3 m' },
    answers: { p_arch: '32.03 kPa', p_plain: '54 kPa' },
    tolerance: { relative: 0.001 },
  },
  {
    id: 'arc-3',
    source: 'Equation of Terzaghi 1943, worked by hand',
    status: 'computed',
    says: 'the same strip far below the ground',
    inputs: { ...sand, cover: '100 m' },
    answers: { p_arch: '46.77 kPa' },
    tolerance: { relative: 0.001 },
  },
]
