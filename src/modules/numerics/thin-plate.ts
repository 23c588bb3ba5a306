import { NumericRefusal } from './numeric-refusal.ts'
import { plateBalance } from './plate-balance.ts'
import { type PlateChange, plateChange } from './plate-changes.ts'
import { cornerHoldDown, type PlateEdge, plateEdge } from './plate-edges.ts'
import { type PlateField, plateField } from './plate-field.ts'
import type { PlateMesh } from './plate-mesh.ts'
import type { EdgeName, PlatePanel } from './plate-panel.ts'
import { type Measure, type Peak, platePeak, plateSamples } from './plate-peaks.ts'
import type { Part } from './plate-places.ts'
import { type PlateState, plateStateAt } from './plate-state.ts'

/** Answers of a thin plate: multiples of q a^4/D (deflection), q a^2 (moments, hold-down) and q a (shears, reactions). */
export type ThinPlate = {
  readonly panel: PlatePanel
  readonly field: PlateField
  readonly centre: PlateState
  readonly deflection: Peak
  /** Largest sagging moments along x and along y, anywhere in the panel. */
  readonly sagging: { readonly x: Peak; readonly y: Peak }
  readonly edges: Readonly<Record<EdgeName, PlateEdge>>
  /** Force that holds each corner down (positive) in the order left-bottom, right-bottom, left-top, right-top. */
  readonly holdDown: readonly [number, number, number, number]
  readonly verification: PlateVerification
}

/** How far the answer is to be trusted. */
export type PlateVerification = {
  readonly meshes: { readonly fine: PlateMesh; readonly coarse: PlateMesh }
  /** Largest change of the answers from the coarse mesh to the fine, as a share of the largest value of the kind. */
  readonly change: PlateChange
  /** Shears round the inner rectangle (0.2 to 0.8 of both sides) over the load on it, less 1. */
  readonly innerBalance: number
  /** Edge reactions less hold-down over the load, less 1; poor (some per cent) with a corner of fixed and free edges. */
  readonly edgeBalance: number
}

const meshes = { fine: { outer: 4, middle: 6 }, coarse: { outer: 3, middle: 5 } } as const

/** Largest change of a moment between the meshes that is still an answer. */
const allowedChange = 0.01

const panelPart: Part = { x: [0, 1], y: [0, 1] }

/**
 * Elastic thin plate under a load that is uniform or varies along one axis, each edge fixed, simply supported or (one
 * at most) free. `panel` and the answers are normalised by the side a along x, the intensity q and the stiffness D.
 * Any other place: `plateStateAt(result.field, x, y)`.
 * Refuses what `checkedPanel` refuses, and an answer whose moments change by more than 1 % between two meshes.
 * Valid for plates thin against their sides and deflections small against the thickness.
 * Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. (memory); method in `plateField`.
 */
export function thinPlate(panel: PlatePanel): ThinPlate {
  const field = plateField(panel, meshes.fine)
  const edge = (name: EdgeName) => plateEdge(field, name)
  const samples = plateSamples(field, panelPart)
  const peak = (measure: Measure) => platePeak(field, measure, { part: panelPart, samples })
  const values = {
    deflection: peak(state => state.deflection),
    sagging: { x: peak(state => state.mx), y: peak(state => state.my) },
    edges: { left: edge('left'), right: edge('right'), bottom: edge('bottom'), top: edge('top') },
  }
  const change = settled(plateChange(values, plateField(panel, meshes.coarse)))
  const verification = { meshes, change, ...plateBalance(field) }
  return {
    panel,
    field,
    centre: plateStateAt(field, 0.5, 0.5),
    ...values,
    holdDown: cornerHoldDown(field),
    verification,
  }
}

function settled(change: PlateChange): PlateChange {
  if (change.moment <= allowedChange) return change
  const got = `${(100 * change.moment).toFixed(1)} %`
  throw new NumericRefusal('panel', `Expected moments of \`panel\` to change by 1 % at most between meshes, got ${got}`)
}
