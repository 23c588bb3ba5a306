import { finite, NumericRefusal } from './numeric-refusal.ts'
import type { EdgeKind } from './plate-axis.ts'

/** Names of the four edges: `left` at x = 0, `right` at x = a, `bottom` at y = 0, `top` at y = b. */
export const edgeNames = ['left', 'right', 'bottom', 'top'] as const
export type EdgeName = (typeof edgeNames)[number]

/**
 * A rectangular panel in normalised form. Lengths are in sides a (along x), loads in a reference intensity q:
 * the load at a place is q (uniform + varying * share), share running from 0 to 1 along `along` (x unless given).
 */
export type PlatePanel = {
  /** b/a, side along y over side along x: 0.2 to 5. */
  readonly ratio: number
  /** Each edge held, save one at most that may be free. */
  readonly edges: Readonly<Record<EdgeName, EdgeKind>>
  /** Poisson's ratio: 0 to 0.49. */
  readonly nu: number
  readonly load: { readonly uniform: number; readonly varying?: number; readonly along?: 'x' | 'y' }
}

/**
 * Returns the panel unchanged; refuses a ratio outside 0.2 to 5, Poisson's ratio outside 0 to 0.49, a load that is
 * nil, negative or of two signs, and more than one free edge (the range the solution has been verified in).
 */
export function checkedPanel(panel: PlatePanel): PlatePanel {
  within(panel.ratio, 'ratio', [0.2, 5])
  within(panel.nu, 'nu', [0, 0.49])
  checkLoad(panel.load)
  for (const name of edgeNames) checkEdge(panel.edges[name], name)
  const free = edgeNames.filter(name => panel.edges[name] === 'free')
  if (free.length < 2) return panel
  throw new NumericRefusal('edges', `Expected one free edge at most in \`edges\`, got ${free.length}`)
}

function within(value: number, input: string, [least, most]: readonly [number, number]): void {
  const inside = value >= least && value <= most
  if (!inside) throw new NumericRefusal(input, `Expected \`${input}\` from ${least} to ${most}, got ${value}`)
}

function checkLoad(load: PlatePanel['load']): void {
  const start = finite(load.uniform, 'load')
  const end = start + finite(load.varying ?? 0, 'load')
  const near = -1e-12 * Math.max(Math.abs(start), Math.abs(end))
  if (start < near || end < near || !(start + end > 0)) {
    throw new NumericRefusal('load', `Expected \`load\` of one sign, not nil, got ${start} to ${end}`)
  }
}

function checkEdge(kind: EdgeKind, name: EdgeName): void {
  if (['fixed', 'simple', 'free'].includes(kind)) return
  throw new NumericRefusal('edges', `Expected \`fixed\`, \`simple\` or \`free\` for edge \`${name}\`, got ${kind}`)
}
