import { edgeBearing, momentAcross, type PlateEdge } from './plate-edges.ts'
import type { PlateField } from './plate-field.ts'
import { type EdgeName, edgeNames } from './plate-panel.ts'
import type { Peak } from './plate-peaks.ts'
import { type PlateState, plateStateAt } from './plate-state.ts'

/** Largest change of any value of a kind between two meshes, as a share of the largest value of that kind. */
export type PlateChange = { readonly deflection: number; readonly moment: number; readonly shear: number }

/** The values whose change is followed. */
export type PlateValues = {
  readonly deflection: Peak
  readonly sagging: { readonly x: Peak; readonly y: Peak }
  readonly edges: Readonly<Record<EdgeName, PlateEdge>>
}

type Sample = { readonly fine: number; readonly coarse: number }

/** Changes from `coarse` to the values found on a finer mesh; the coarse field is read at the places found there. */
export function plateChange(values: PlateValues, coarse: PlateField): PlateChange {
  const { deflection, sagging, edges } = values
  const sample = (peak: Peak, measure: (state: PlateState) => number): Sample => ({
    fine: peak.value,
    coarse: measure(plateStateAt(coarse, peak.x, peak.y)),
  })
  const moments = edgeNames.flatMap(name => {
    const peak = edges[name].hogging
    return peak ? [sample(peak, state => momentAcross(state, name))] : []
  })
  const shears = edgeNames.flatMap(name => {
    const { shear, reaction } = edges[name]
    if (!shear || !reaction) return []
    const bearing = (kind: 'q' | 'v') => (state: PlateState) => edgeBearing(state, name, kind)
    return [sample(shear.peak, bearing('q')), sample(reaction.peak, bearing('v'))]
  })
  const sags = [sample(sagging.x, state => state.mx), sample(sagging.y, state => state.my)]
  const surface = [sample(deflection, state => state.deflection)]
  return { deflection: largest(surface), moment: largest([...moments, ...sags]), shear: largest(shears) }
}

function largest(samples: readonly Sample[]): number {
  const scale = Math.max(...samples.map(({ fine }) => Math.abs(fine)))
  return Math.max(...samples.map(({ fine, coarse }) => Math.abs(fine - coarse))) / scale
}
