import type { Method, Solved } from '../method.ts'
import { percentAbove } from '../percent-above.ts'

interface Soil {
  readonly thickness: number
  readonly gamma: number
  readonly gamma_sat: number
  readonly c: number
  readonly K_h: number
  readonly least: number
}

interface Wall {
  readonly top: number
  readonly base: number
  readonly surcharge: number
  readonly gamma_w: number
  readonly water: number
  readonly soils: readonly Soil[]
  /** Sign of the part of cohesion: -1 active, 1 passive, 0 none. */
  readonly cohesion: number
}

type Numbers = Readonly<Record<string, number | readonly number[]>>

const sliceCount = 4000

/** Force on a wall and its height, by thin level slices from the ground down: no straight-line formulas. */
export const wallSlices: Method = {
  id: 'wall-slices',
  title: 'Pressure on the wall by slices',
  says: `From the ground down in ${sliceCount} level slices: each adds its own weight to the stress, and its own pressure to force and moment.`,
  takes: {
    thickness: 'length',
    gamma: 'unit_weight',
    gamma_sat: 'unit_weight',
    c: 'pressure',
    K_h: 'ratio',
    least: 'pressure',
    top: 'length',
    base: 'length',
    surcharge: 'pressure',
    gamma_w: 'unit_weight',
    water: 'length',
  },
  run: (numbers, words) => solved(wallOf(numbers, words.state ?? '')),
}

function wallOf(numbers: Numbers, state: string): Wall {
  const one = (name: string, absent: number): number => {
    const value = numbers[name]
    return typeof value === 'number' ? value : absent
  }
  const list = (name: string): readonly number[] => {
    const value = numbers[name]
    return typeof value === 'object' ? value : []
  }
  const at = (name: string, index: number): number => list(name)[index] ?? 0
  const soils = list('thickness').map((thickness, i) => ({
    thickness,
    gamma: at('gamma', i),
    gamma_sat: at('gamma_sat', i),
    c: at('c', i),
    K_h: at('K_h', i),
    least: at('least', i),
  }))
  return {
    top: one('top', Number.NaN),
    base: one('base', Number.NaN),
    surcharge: one('surcharge', Number.NaN),
    gamma_w: one('gamma_w', 0),
    water: one('water', Number.POSITIVE_INFINITY),
    soils,
    cohesion: state === 'active' ? -1 : state === 'passive' ? 1 : 0,
  }
}

function solved(wall: Wall): Solved {
  const coarse = sliced(wall, sliceCount)
  const fine = sliced(wall, 2 * sliceCount)
  const change = Math.max(
    Math.abs(fine.force - coarse.force) / Math.abs(fine.force),
    Math.abs(fine.moment - coarse.moment) / Math.abs(fine.moment),
  )
  if (!(fine.force > 0)) return { ok: true, values: { force: 0, moment: 0 }, verified: 'no slice presses on the wall' }
  if (!(change < 2e-3)) return { ok: false, says: 'the slices do not settle on one force' }
  return {
    ok: true,
    values: fine,
    verified: `half as many slices give the same force and moment within ${percentAbove(change, 4)} %`,
  }
}

function sliced(wall: Wall, count: number): { force: number; moment: number } {
  const { top, base, soils, gamma_w, water } = wall
  const slice = base / count
  let stress = wall.surcharge
  let force = 0
  let moment = 0
  for (let i = 0; i < count; i += 1) {
    const depth = (i + 0.5) * slice
    const soil = soilAt(soils, depth)
    if (!soil) return { force: Number.NaN, moment: Number.NaN }
    const weight = depth > water ? soil.gamma_sat - gamma_w : soil.gamma
    const middle = stress + (weight * slice) / 2
    stress += weight * slice
    const onWall = Math.min(1, Math.max(0, ((i + 1) * slice - top) / slice))
    const held = wall.cohesion * 2 * soil.c * Math.sqrt(soil.K_h)
    const pressure = Math.max(soil.least, soil.K_h * middle + held) + gamma_w * Math.max(0, depth - water)
    force += pressure * slice * onWall
    moment += pressure * slice * onWall * (base - depth)
  }
  return { force, moment }
}

function soilAt(soils: readonly Soil[], depth: number): Soil | undefined {
  let under = 0
  return soils.find(soil => {
    under += soil.thickness
    return depth <= under
  })
}
