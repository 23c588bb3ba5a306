import type { EdgeKind } from './plate-axis.ts'
import type { EdgeName, PlatePanel } from './plate-panel.ts'

/** A place on a panel, as shares of its sides. */
export type Place = { readonly x: number; readonly y: number }

/** Part of a panel (a line when one range is a point), as shares of its sides. */
export type Part = { readonly x: readonly [number, number]; readonly y: readonly [number, number] }

/** Whether an edge runs along y, so that `mx` and `qx` act across it. */
export function upright(edge: EdgeName): boolean {
  return edge === 'left' || edge === 'right'
}

/** The part of an edge between two shares of its length. */
export function edgePart(edge: EdgeName, range: readonly [number, number]): Part {
  const side = edge === 'right' || edge === 'top' ? 1 : 0
  return upright(edge) ? { x: [side, side], y: range } : { x: range, y: [side, side] }
}

/**
 * The range of an edge, in shares of its length, that is clear of corners between a fixed and a free edge. There the
 * elastic moments have no bound and the shears still less: the corner is left out to `part` of the shorter side.
 */
export function clearRange(panel: PlatePanel, edge: EdgeName, { part }: { readonly part: number }): [number, number] {
  const { edges } = panel
  const [start, end] = upright(edge) ? ([edges.bottom, edges.top] as const) : ([edges.left, edges.right] as const)
  const out = leftOut(panel, part)[upright(edge) ? 'y' : 'x']
  return [unbounded(edges[edge], start) ? out : 0, unbounded(edges[edge], end) ? 1 - out : 1]
}

/** Part of the shorter side left out of the search for moments. */
export const momentPart = 0.1

/** Whether a place is clear of corners between a fixed and a free edge. */
export function clearOfCorners(panel: PlatePanel, { x, y }: Place): boolean {
  const out = leftOut(panel, momentPart)
  const nearX = x < out.x ? 'left' : x > 1 - out.x ? 'right' : undefined
  const nearY = y < out.y ? 'bottom' : y > 1 - out.y ? 'top' : undefined
  return !nearX || !nearY || !unbounded(panel.edges[nearX], panel.edges[nearY])
}

function leftOut({ ratio }: PlatePanel, part: number): Place {
  const shorter = Math.min(1, ratio)
  return { x: part * shorter, y: (part * shorter) / ratio }
}

function unbounded(one: EdgeKind, other: EdgeKind): boolean {
  return (one === 'fixed' && other === 'free') || (one === 'free' && other === 'fixed')
}
