import type { Condition } from '../module.ts'
import { type PanelWord, panelWords } from './is456-table-26.ts'

/** Whether the slab runs on over each edge of a panel: the two long edges, then the two short ones. */
export type PanelEdges = { readonly long: readonly [boolean, boolean]; readonly short: readonly [boolean, boolean] }

const both = [true, true] as const
const one = [true, false] as const
const none = [false, false] as const

/** The edges each panel of IS 456 Table 26 speaks of. */
export const panelEdges: Readonly<Record<PanelWord, PanelEdges>> = {
  'all continuous': { long: both, short: both },
  'one short edge discontinuous': { long: both, short: one },
  'one long edge discontinuous': { long: one, short: both },
  'two adjacent edges discontinuous': { long: one, short: one },
  'two short edges discontinuous': { long: both, short: none },
  'two long edges discontinuous': { long: none, short: both },
  'one long edge continuous': { long: one, short: none },
  'one short edge continuous': { long: none, short: one },
  'all discontinuous': { long: none, short: none },
}

const words = Object.keys(panelWords) as PanelWord[]
const count = (ends: readonly [boolean, boolean]) => ends.filter(runsOn => runsOn).length

/** Condition that a panel has one of these numbers of continuous edges of a kind. */
export const continuous = (kind: keyof PanelEdges, counts: readonly number[]): Condition => ({
  choice: 'edges',
  is: words.filter(word => counts.includes(count(panelEdges[word][kind]))),
})

/** Corners of a panel at which exactly `discontinuous` of the two edges that meet are discontinuous. */
export function corners(word: PanelWord, discontinuous: number): number {
  const { long, short } = panelEdges[word]
  const meeting = long.flatMap(a => short.map(b => 2 - count([a, b])))
  return meeting.filter(found => found === discontinuous).length
}

/** Condition that a panel has a corner at which exactly `discontinuous` of the two edges that meet are discontinuous. */
export const withCorners = (discontinuous: number): Condition => ({
  choice: 'edges',
  is: words.filter(word => corners(word, discontinuous) > 0),
})
