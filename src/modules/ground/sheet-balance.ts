import type { Method, Solved } from '../method.ts'
import { findRoot } from '../numerics/find-root.ts'
import { integrateCells } from '../numerics/integrate-cells.ts'
import { percentAbove } from '../percent-above.ts'

type Numbers = Readonly<Record<string, number | readonly number[]>>

/** Net pressure on the wall, towards the pit where positive, by depth below formation (negative above it). */
interface Wall {
  readonly retained: number
  readonly above: (z: number) => number
  readonly before: (z: number) => number
  readonly behind: (z: number) => number
}

const cells = 2000

/**
 * A cantilever wall by trial: for an embedment the point of turning is sought at which forces balance, then the embedment at which
 * moments about the toe balance too. Pressures come from the soil itself, not from the equations of the working.
 */
export const sheetBalance: Method = {
  id: 'sheet-balance',
  title: 'Forces and moments by slices',
  says: `Net pressure from the weights and coefficients in ${cells} slices; the point of turning is tried until forces balance, and the embedment until moments do.`,
  takes: {
    depth: 'length',
    dry: 'length',
    gamma: 'unit_weight',
    gamma_b: 'unit_weight',
    surcharge: 'pressure',
    K_a: 'ratio',
    resistance: 'pressure',
    K_p: 'ratio',
  },
  run: (numbers, { below }) => solved(wallOf(numbers, below === 'clay')),
}

function wallOf(numbers: Numbers, clay: boolean): Wall {
  const one = (name: string): number => Number(numbers[name] ?? Number.NaN)
  const [depth, dry, q, K_a] = [one('depth'), one('dry'), one('surcharge'), one('K_a')]
  const weight = (z: number): number => one('gamma') * Math.min(z, dry) + one('gamma_b') * Math.max(z - dry, 0)
  const own = (z: number): number => one('gamma_b') * z
  const above = (z: number): number => K_a * (q + weight(depth + z))
  if (clay) {
    // Four strengths: passive two beside active two, the overburden behind against nothing before.
    const four = one('resistance')
    return { retained: depth, above, before: () => q + weight(depth) - four, behind: () => four + weight(depth) }
  }
  const before = (z: number): number => K_a * (q + weight(depth) + own(z)) - one('K_p') * own(z)
  const behind = (z: number): number => one('K_p') * (weight(depth) + own(z)) - K_a * own(z)
  return { retained: depth, above, before, behind }
}

function solved(wall: Wall): Solved {
  const least = leastDepth(wall)
  if (least === undefined) return { ok: false, says: 'no embedment balances this wall' }
  const miss = (depth: number): number => momentAboutToe(wall, depth, turned(wall, depth))
  const most = doubled(wall, miss)
  if (most === undefined) return { ok: false, says: 'no embedment balances this wall' }
  const depth = findRoot(miss, { from: least, to: most, tolerance: 1e-7 }).root
  return {
    ok: true,
    values: { depth, moment: largestMoment(wall, depth) },
    verified: `forces balance within ${percentAbove(unbalanced(wall, depth), 5)} % of the force above formation`,
  }
}

/** The height of the wall, doubled until what is left turns negative; none where it does not. */
function doubled(wall: Wall, left: (depth: number) => number): number | undefined {
  for (let depth = wall.retained; depth < 1e5 * wall.retained; depth *= 2) if (left(depth) < 0) return depth
  return undefined
}

const area = (f: (z: number) => number, from: number, to: number): number =>
  to > from ? integrateCells(f, { from, to, cells, rule: 'trapezoid' }).value : 0

const pushing = (wall: Wall): number => area(wall.above, -wall.retained, 0)

/** What the balance of forces leaves with the toe turned, as a part of the force above formation. */
function unbalanced(wall: Wall, depth: number): number {
  const height = turned(wall, depth)
  const toe = ((wall.before(depth - height) + wall.behind(depth)) / 2) * height
  return Math.abs(pushing(wall) + area(wall.before, 0, depth - height) + toe) / pushing(wall)
}

/** The embedment at which all resistance before the wall just meets the force, without any turning. */
function leastDepth(wall: Wall): number | undefined {
  const left = (depth: number): number => pushing(wall) + area(wall.before, 0, depth)
  const most = doubled(wall, left)
  return most === undefined ? undefined : findRoot(left, { from: 0, to: most, tolerance: 1e-9 }).root
}

/** Height of the toe that is turned, straight from the net pressure before to that behind, for which forces balance. */
function turned(wall: Wall, depth: number): number {
  const left = (height: number): number => {
    const top = wall.before(depth - height)
    return pushing(wall) + area(wall.before, 0, depth - height) + ((top + wall.behind(depth)) / 2) * height
  }
  if (left(0) >= 0) return 0
  return findRoot(left, { from: 0, to: depth, tolerance: 1e-9 }).root
}

function momentAboutToe(wall: Wall, depth: number, height: number): number {
  const turn = depth - height
  const top = wall.before(turn)
  const arm = (f: (z: number) => number) => (z: number) => f(z) * (depth - z)
  const straight = (height ** 2 * (2 * top + wall.behind(depth))) / 6
  return area(arm(wall.above), -wall.retained, 0) + area(arm(wall.before), 0, turn) + straight
}

/** Where the shear is nil below formation, all forces above it turned about it. */
function largestMoment(wall: Wall, depth: number): number {
  const shear = (z: number): number => pushing(wall) + area(wall.before, 0, z)
  const at = findRoot(shear, { from: 0, to: depth, tolerance: 1e-9 }).root
  const arm = (f: (z: number) => number) => (z: number) => f(z) * (at - z)
  return area(arm(wall.above), -wall.retained, 0) + area(arm(wall.before), 0, at)
}
