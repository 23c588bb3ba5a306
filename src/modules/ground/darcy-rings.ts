import type { Method, Solved } from '../method.ts'
import { findRoot } from '../numerics/find-root.ts'
import { percentAbove } from '../percent-above.ts'

type Numbers = Readonly<Record<string, number | readonly number[]>>

interface Field {
  readonly k: number
  readonly inner: number
  readonly outer: number
  /** Head at the ring and far away, above the base of the aquifer. */
  readonly low: number
  readonly high: number
  /** Depth of flow at a head. */
  readonly flowing: (head: number) => number
}

const ringCount = 4000

/**
 * Flow to a well by Darcy's law ring after ring: the head is marched outwards from the ring for a trial flow, and the flow is sought
 * that meets the head far away. No logarithm and no squared head. Refuses a field without fall of head or width.
 */
export const darcyRings: Method = {
  id: 'darcy-rings',
  title: "Darcy's law ring by ring",
  says: `The ground from the ring to the radius of influence in ${ringCount} rings: in each the gradient drives the flow through its own circumference and depth.`,
  takes: {
    k: 'permeability',
    inner: 'length',
    outer: 'length',
    low: 'length',
    high: 'length',
    thickness: 'length',
  },
  run: (numbers, words) => solved(fieldOf(numbers, words.aquifer === 'confined')),
}

function fieldOf(numbers: Numbers, full: boolean): Field {
  const one = (name: string): number => Number(numbers[name] ?? Number.NaN)
  const thickness = one('thickness')
  return {
    k: one('k'),
    inner: one('inner'),
    outer: one('outer'),
    low: one('low'),
    high: one('high'),
    flowing: full ? () => thickness : head => head,
  }
}

function solved(field: Field): Solved {
  if (!(field.high > field.low && field.outer > field.inner && field.low > 0))
    return { ok: false, says: 'there is no fall of head between the two radii' }
  const coarse = flowIn(field, ringCount / 2)
  const fine = flowIn(field, ringCount)
  const change = Math.abs(fine - coarse) / fine
  if (!(change < 1e-3)) return { ok: false, says: 'the rings do not settle on one flow' }
  return {
    ok: true,
    values: { flow: fine },
    verified: `half as many rings give the same flow within ${percentAbove(change, 5)} %`,
  }
}

function flowIn(field: Field, rings: number): number {
  // No ring lets more through than the steepest gradient over the deepest flow and the longest circumference.
  const { k, inner, outer, low, high, flowing } = field
  const most = (2 * Math.PI * k * outer * flowing(high) * (high - low)) / (outer - inner)
  const miss = (flow: number): number => marched(field, { flow, rings }) - high
  return findRoot(miss, { from: 0, to: most }).root
}

/** Head at the outer radius; rings of one ratio, each with its own middle radius and the depth of flow at its middle. */
function marched({ k, inner, outer, low, flowing }: Field, trial: { flow: number; rings: number }): number {
  const ratio = (outer / inner) ** (1 / trial.rings)
  let head = low
  let radius = inner
  for (let i = 0; i < trial.rings; i += 1) {
    const next = radius * ratio
    const middle = (radius + next) / 2
    const gradientOver = (depth: number): number => trial.flow / (2 * Math.PI * middle * k * depth)
    const half = head + (gradientOver(flowing(head)) * (next - radius)) / 2
    head += gradientOver(flowing(half)) * (next - radius)
    radius = next
  }
  return head
}
