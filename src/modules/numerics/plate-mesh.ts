import type { EdgeKind, PlateAxis } from './plate-axis.ts'
import type { PlatePanel } from './plate-panel.ts'

/** Inner shapes of the elements near the edges (`outer`) and of the element between them (`middle`). */
export type PlateMesh = { readonly outer: number; readonly middle: number }

/** Both axes of a panel and the lengths they stand for, in sides a: half the side where an axis ends in a mirror. */
export type PlateAxes = { readonly x: PlateAxis; readonly y: PlateAxis; readonly lengths: readonly [number, number] }

/**
 * Axes of a checked panel cut into elements that are small at the edges, where the corners make the moments singular.
 * An axis that is the same both ways under the load runs to its line of symmetry only.
 */
export function plateAxes({ edges, load, ratio }: PlatePanel, mesh: PlateMesh): PlateAxes {
  const varies = load.varying ? (load.along ?? 'x') : undefined
  const shorter = Math.min(1, ratio)
  const x = plateAxis([edges.left, edges.right], mesh, { length: 1 / shorter, varies: varies === 'x' })
  const y = plateAxis([edges.bottom, edges.top], mesh, { length: ratio / shorter, varies: varies === 'y' })
  return { x, y, lengths: [lengthOf(x, 1), lengthOf(y, ratio)] }
}

type Side = { readonly length: number; readonly varies: boolean }

function plateAxis(ends: readonly [EdgeKind, EdgeKind], { outer, middle }: PlateMesh, side: Side): PlateAxis {
  const cuts = edgeCuts(side.length).map(cut => cut / side.length)
  const near = cuts.map(() => outer)
  if (ends[0] === ends[1] && !side.varies) {
    const breaks = [0, ...cuts.map(cut => 2 * cut), 1]
    // Half of the middle needs fewer shapes: those of one parity are left out by the mirror.
    return { ends: [ends[0], 'mirror'], breaks, inner: [...near, Math.ceil(0.6 * middle)] }
  }
  const breaks = [0, ...cuts, ...cuts.map(cut => 1 - cut).reverse(), 1]
  return { ends, breaks, inner: [...near, middle, ...near] }
}

/** Cuts from an edge, in shorter sides: bending at an edge dies out over about one of them. */
function edgeCuts(length: number): readonly number[] {
  return length > 1.8 ? [0.15, 0.6] : [0.15]
}

function lengthOf(axis: PlateAxis, side: number): number {
  return axis.ends[1] === 'mirror' ? side / 2 : side
}
