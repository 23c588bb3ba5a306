import type { Slope } from './slip-circle.ts'

/** What the methods of the slip take, by dimension; water and strength as far as they are given. */
export const slopeTakes = {
  height: 'length',
  slope: 'angle',
  hard: 'length',
  c: 'pressure',
  c_u: 'pressure',
  phi: 'angle',
  gamma: 'unit_weight',
  gamma_sat: 'unit_weight',
  gamma_w: 'unit_weight',
  water: 'length',
  ratio: 'ratio',
  load: 'pressure',
  load_from: 'length',
  crack: 'length',
  crack_water: 'length',
} as const

/** The slope from the numbers that the choices of a block give: elsewhere no friction, no water above the hard ground, no load, no crack. */
export function slopeOf(numbers: Readonly<Record<string, number | readonly number[]>>): Slope {
  const one = (name: keyof typeof slopeTakes, absent = Number.NaN): number => Number(numbers[name] ?? absent)
  const [height, rise] = [one('height'), Math.tan(one('slope'))]
  return {
    height,
    rise,
    crest: height / rise,
    hard: one('hard'),
    cohesion: one('c', one('c_u')),
    friction: Math.tan(one('phi', 0)),
    gamma: one('gamma'),
    gammaSat: one('gamma_sat', one('gamma')),
    gammaW: one('gamma_w'),
    water: one('water', -one('hard')),
    ratio: one('ratio', 0),
    load: one('load', 0),
    loadFrom: one('load_from', 0),
    crack: one('crack', 0),
    crackWater: one('crack_water', 0),
  }
}
