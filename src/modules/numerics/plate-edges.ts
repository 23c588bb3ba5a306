import type { EdgeKind } from './plate-axis.ts'
import type { PlateField } from './plate-field.ts'
import type { EdgeName } from './plate-panel.ts'
import { type Measure, type Peak, type PlateSample, platePeak, plateSamples } from './plate-peaks.ts'
import { clearRange, edgePart, momentPart, type Part, upright } from './plate-places.ts'
import { type PlateState, plateStateAt } from './plate-state.ts'

/** What acts at one edge: moments are negative where they hog, shears and reactions positive where the edge bears. */
export type PlateEdge = {
  readonly kind: EdgeKind
  /** Moment across a fixed edge: largest hogging and its place, and at mid-length; absent on other edges. */
  readonly hogging?: Peak
  readonly hoggingMiddle?: number
  /** The part searched for `hogging`, in shares of the length: it stops a tenth of the shorter side from a free edge. */
  readonly searched: readonly [number, number]
  /** Shear and Kirchhoff reaction per length of a held edge; absent on a free one. */
  readonly shear?: EdgeForce
  readonly reaction?: EdgeForce
}

/**
 * Force per length at mid-length, and the largest over the middle three quarters of an edge (short of a corner between
 * a fixed and a free edge by a quarter of the shorter side).
 */
export type EdgeForce = { readonly middle: number; readonly peak: Peak }

/** What acts at the edge `name` of a solved panel. */
export function plateEdge(field: PlateField, name: EdgeName): PlateEdge {
  const kind = field.panel.edges[name]
  const searched = clearRange(field.panel, name, { part: momentPart })
  if (kind === 'free') return { kind, searched }
  const middle = middleOf(field, name)
  const part = edgePart(name, forceRange(field, name))
  const along = { field, middle, part, samples: plateSamples(field, part) }
  const shear = edgeForce(along, state => edgeBearing(state, name, 'q'))
  const reaction = edgeForce(along, state => edgeBearing(state, name, 'v'))
  const borne = { kind, searched, shear, reaction }
  if (kind === 'simple') return borne
  return { ...borne, hogging: edgeHogging(field, name, searched), hoggingMiddle: momentAcross(middle, name) }
}

function forceRange({ panel }: PlateField, name: EdgeName): readonly [number, number] {
  const [from, to] = clearRange(panel, name, { part: 1 / 4 })
  return [Math.max(from, 1 / 8), Math.min(to, 7 / 8)]
}

type Along = {
  readonly field: PlateField
  readonly middle: PlateState
  readonly part: Part
  readonly samples: readonly PlateSample[]
}

function edgeForce({ field, middle, part, samples }: Along, measure: Measure): EdgeForce {
  return { middle: measure(middle), peak: platePeak(field, measure, { part, samples }) }
}

function edgeHogging(field: PlateField, name: EdgeName, range: readonly [number, number]): Peak {
  const part = edgePart(name, range)
  const samples = plateSamples(field, part)
  const peak = platePeak(field, state => -momentAcross(state, name), { part, samples })
  return { ...peak, value: -peak.value }
}

function middleOf(field: PlateField, name: EdgeName): PlateState {
  const { x, y } = edgePart(name, [0.5, 0.5])
  return plateStateAt(field, x[0], y[0])
}

/** The moment of a state across the edge `name` (the moment that hogs there when it is fixed). */
export function momentAcross(state: PlateState, name: EdgeName): number {
  return upright(name) ? state.mx : state.my
}

/** Shear (`q`) or Kirchhoff reaction (`v`) of a state as the force with which the edge `name` bears. */
export function edgeBearing(state: PlateState, name: EdgeName, kind: 'q' | 'v'): number {
  const force = upright(name) ? state[`${kind}x`] : state[`${kind}y`]
  return name === 'left' || name === 'bottom' ? force : -force
}

/**
 * Forces that hold the corners down (positive where they would lift), in the order left-bottom, right-bottom,
 * left-top, right-top. Source: R = 2 (1 - nu) D w_xy, Timoshenko and Woinowsky-Krieger, art. 22 (memory).
 */
export function cornerHoldDown(field: PlateField): readonly [number, number, number, number] {
  const twist = (x: number, y: number) => 2 * plateStateAt(field, x, y).mxy
  return [twist(0, 0), -twist(1, 0), -twist(0, 1), twist(1, 1)]
}
