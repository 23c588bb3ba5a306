import type { Method, Solved } from '../method.ts'
import { percentAbove } from '../percent-above.ts'

interface Wall {
  readonly stem: number
  readonly stem_top: number
  readonly stem_foot: number
  readonly base: number
  readonly toe: number
  readonly heel: number
  readonly gamma_c: number
  readonly gamma: number
  readonly gamma_sat: number
  readonly gamma_w: number
  readonly alpha: number
  readonly K_a: number
  readonly surcharge: number
  readonly water: number
}

const stripCount = 2000

/** Load on the ground, horizontal force and lever of the resultant of a cantilever wall, by upright strips and level slices. */
export const wallStrips: Method = {
  id: 'wall-strips',
  title: 'The wall by strips and slices',
  says: `Wall and fill are weighed in ${stripCount} upright strips, each with its own uplift, and the plane through the heel is pressed in ${stripCount} level slices, each by the stress above it.`,
  takes: {
    stem: 'length',
    stem_top: 'length',
    stem_foot: 'length',
    base: 'length',
    toe: 'length',
    heel: 'length',
    gamma_c: 'unit_weight',
    gamma: 'unit_weight',
    gamma_sat: 'unit_weight',
    gamma_w: 'unit_weight',
    alpha: 'angle',
    K_a: 'ratio',
    surcharge: 'pressure',
    water: 'length',
  },
  run: numbers => solved(numbers as unknown as Wall),
}

function solved(wall: Wall): Solved {
  const [coarse, fine] = [added(wall, stripCount / 2), added(wall, stripCount)]
  const change = Math.abs(fine.lever - coarse.lever) / width(wall)
  if (!(change < 1e-3)) return { ok: false, says: 'strips and slices do not settle on one resultant' }
  return {
    ok: true,
    values: fine,
    verified: `with half as many the resultant moves by less than ${percentAbove(change, 4)} % of the base`,
  }
}

const width = ({ toe, stem_foot, heel }: Wall): number => toe + stem_foot + heel

function added(wall: Wall, count: number): { load: number; across: number; lever: number } {
  const down = weighed(wall, count)
  const plane = pressed(wall, count)
  const load = down.force + plane.down
  return { load, across: plane.across, lever: (down.moment + plane.down * width(wall) - plane.moment) / load }
}

/** Weight less uplift of each upright strip, and its moment about the toe. */
function weighed(wall: Wall, count: number): { force: number; moment: number } {
  const strip = width(wall) / count
  let [force, moment] = [0, 0]
  for (let i = 0; i < count; i += 1) {
    const x = (i + 0.5) * strip
    const weight = wall.gamma_c * (wall.base + stemAt(wall, x)) + fillAt(wall, x)
    const uplift = (wall.gamma_w * wall.water * x) / width(wall)
    force += (weight - uplift) * strip
    moment += (weight - uplift) * strip * x
  }
  return { force, moment }
}

/** Height of the stem over a place of the base: its front leans where it is thicker at the foot. */
function stemAt({ toe, stem, stem_top, stem_foot }: Wall, x: number): number {
  const [front, back] = [toe, toe + stem_foot]
  if (x < front || x > back) return 0
  const taper = stem_foot - stem_top
  return x - front < taper ? (stem * (x - front)) / taper : stem
}

function fillAt({ toe, stem_foot, stem, base, alpha, water, gamma, gamma_sat }: Wall, x: number): number {
  const behind = x - toe - stem_foot
  if (behind <= 0) return 0
  const wet = Math.max(water - base, 0)
  return gamma * (stem + behind * Math.tan(alpha) - wet) + gamma_sat * wet
}

/** Pressure of each level slice of the plane through the heel: earth along the slope of the ground, water across. */
function pressed(wall: Wall, count: number): { across: number; down: number; moment: number } {
  const height = wall.base + wall.stem + wall.heel * Math.tan(wall.alpha)
  const slice = height / count
  let stress = wall.surcharge
  let [across, down, moment] = [0, 0, 0]
  for (let i = 0; i < count; i += 1) {
    const y = height - (i + 0.5) * slice
    const wet = Math.min(1, Math.max(0, (wall.water - (y - slice / 2)) / slice))
    const grows = (wall.gamma * (1 - wet) + (wall.gamma_sat - wall.gamma_w) * wet) * slice
    const earth = wall.K_a * (stress + grows / 2) * slice
    const water = wall.gamma_w * Math.max(0, wall.water - y) * slice
    stress += grows
    across += earth * Math.cos(wall.alpha) + water
    down += earth * Math.sin(wall.alpha)
    moment += (earth * Math.cos(wall.alpha) + water) * y
  }
  return { across, down, moment }
}
