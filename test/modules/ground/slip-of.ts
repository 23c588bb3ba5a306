import type { Slope } from '../../../src/modules/ground/slip-circle.ts'
import { worstSlip } from '../../../src/modules/ground/slip-search.ts'
import { slipFactor } from '../../../src/modules/ground/slip-slices.ts'

/** A slope 10 m high of 20 kN/m³ over hard ground 5 m below its foot, dry and bare; angles in degrees, strengths in kPa. */
export interface Asked extends Partial<Omit<Slope, 'rise' | 'crest' | 'friction' | 'cohesion' | 'load'>> {
  readonly slope: number
  readonly c: number
  readonly phi?: number
  readonly q?: number
}

export const of = (degrees: number): number => (degrees * Math.PI) / 180

export function slopeWith({ slope, c, phi = 0, q = 0, ...more }: Asked): Slope {
  const dry = { gamma: 20e3, gammaSat: 20e3, gammaW: 9810, water: -100, ratio: 0, loadFrom: 0, crack: 0, crackWater: 0 }
  const { height = 10 } = more
  const rise = Math.tan(of(slope))
  const strength = { cohesion: c * 1e3, friction: Math.tan(of(phi)), load: q * 1e3 }
  return { ...dry, hard: 5, ...more, height, rise, crest: height / rise, ...strength }
}

/** Factor of the worst circle in 200 slices. Refuses (throws) a slope without one. */
export function worstOf(asked: Asked): number {
  const slope = slopeWith(asked)
  const found = worstSlip(slope)
  const fine = found && slipFactor(slope, found.slip, 200)
  if (!fine) throw new Error('no circle')
  return fine.factor
}
