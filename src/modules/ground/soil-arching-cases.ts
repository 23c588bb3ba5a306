import type { PublishedCase } from '../module.ts'

const sand = { span: '3 m', gamma: '18 kN/m^3', phi: '30 deg', surcharge: '0 kPa' } as const
const marston = (id: string, friction: string, load: string): PublishedCase => ({
  id: `arc-1${id}`,
  source: 'Marston, load coefficient of a trench as deep as wide (Spangler and Handy)',
  status: 'computed',
  says: `friction number ${friction}: ${load} of unit weight by width`,
  inputs: {
    span: '1 m',
    cover: '1 m',
    gamma: '1 kN/m^3',
    phi: '30 deg',
    K_s: `${friction} / tan(30 deg)`,
    surcharge: '0 kPa',
  },
  answers: { p_arch: `${load} kPa` },
})

/** Published cases of `soil-arching`. */
export const soilArchingCases: readonly PublishedCase[] = [
  marston('a', '0.1924', '0.830'),
  marston('b', '0.130', '0.881'),
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
