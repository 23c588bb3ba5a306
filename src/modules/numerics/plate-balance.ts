import { gaussLegendre } from './gauss-legendre.ts'
import { entry } from './numeric-refusal.ts'
import { cornerHoldDown, edgeBearing } from './plate-edges.ts'
import type { PlateField } from './plate-field.ts'
import { type EdgeName, edgeNames, type PlatePanel } from './plate-panel.ts'
import { edgePart, upright } from './plate-places.ts'
import { plateStates } from './plate-state.ts'

/** Out of balance of the shears round the inner rectangle, and of the edge reactions, as shares of their loads. */
export type PlateBalance = { readonly innerBalance: number; readonly edgeBalance: number }

const inset = 0.2

/** Places on 0 to 1 and weights that sum to 1. */
type Rule = { readonly shares: readonly number[]; readonly weights: readonly number[] }

/** Whether a field is in balance with its load; the Ritz method does not see to that itself, so this is a check of it. */
export function plateBalance(field: PlateField): PlateBalance {
  const { places, weights } = gaussLegendre(16)
  const rule = { shares: places.map(s => (1 + s) / 2), weights: weights.map(weight => weight / 2) }
  const borne = edgeNames.reduce((sum, name) => sum + edgeTotal(field, name, rule), 0)
  const held = cornerHoldDown(field).reduce((sum, force) => sum + force, 0)
  return {
    innerBalance: innerShears(field, rule) / loadWithin(field.panel, inset) - 1,
    edgeBalance: (borne - held) / loadWithin(field.panel, 0) - 1,
  }
}

/** Load on the rectangle that is `edge` (a share of the sides) away from every edge. */
function loadWithin({ ratio, load }: PlatePanel, edge: number): number {
  return (load.uniform + (load.varying ?? 0) / 2) * ratio * (1 - 2 * edge) ** 2
}

function edgeTotal(field: PlateField, name: EdgeName, { shares, weights }: Rule): number {
  if (field.panel.edges[name] === 'free') return 0
  const { x, y } = edgePart(name, [0, 0])
  const states = upright(name) ? plateStates(field, [x[0]], shares) : plateStates(field, shares, [y[0]])
  const mean = states.flat().reduce((sum, state, i) => sum + entry(weights, i) * edgeBearing(state, name, 'v'), 0)
  return mean * (upright(name) ? field.panel.ratio : 1)
}

function innerShears(field: PlateField, { shares, weights }: Rule): number {
  const [ends, span] = [[inset, 1 - inset], 1 - 2 * inset]
  const inner = shares.map(share => inset + share * span)
  const mean = (forces: readonly number[]) => forces.reduce((sum, force, i) => sum + entry(weights, i) * force, 0)
  const [left = [], right = []] = plateStates(field, ends, inner).map(line => line.map(({ qx }) => qx))
  const lines = plateStates(field, inner, ends)
  const bottom = lines.map(line => line[0]?.qy ?? Number.NaN)
  const top = lines.map(line => line[1]?.qy ?? Number.NaN)
  return span * ((mean(left) - mean(right)) * field.panel.ratio + mean(bottom) - mean(top))
}
