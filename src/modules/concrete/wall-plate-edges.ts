import type { Condition } from '../module.ts'
import type { EdgeKind } from '../numerics/plate-axis.ts'

/** The seven walls of the published tables, in their order. */
export const wallWords = {
  'top free, others fixed': 'no roof yet, or none; joined to raft and cross walls',
  'top hinged, others fixed': 'propped by the roof, joined to raft and cross walls',
  'all fixed': 'joined to roof, raft and cross walls',
  'base fixed, others hinged': 'joined to the raft, held by roof and cross walls',
  'top free, sides hinged, base fixed': 'no roof yet, or none; joined to the raft, held by cross walls',
  'sides fixed, others hinged': 'joined to the cross walls, held by roof and raft',
  'top free, sides fixed, base hinged': 'no roof yet, or none; joined to the cross walls, held by the raft',
} as const

export type WallWord = keyof typeof wallWords

/** How the edges of a wall are held. */
export interface WallEdges {
  readonly top: EdgeKind
  readonly sides: EdgeKind
  readonly base: EdgeKind
}

/** The edges each wall speaks of. */
export const wallEdges: Readonly<Record<WallWord, WallEdges>> = {
  'top free, others fixed': { top: 'free', sides: 'fixed', base: 'fixed' },
  'top hinged, others fixed': { top: 'simple', sides: 'fixed', base: 'fixed' },
  'all fixed': { top: 'fixed', sides: 'fixed', base: 'fixed' },
  'base fixed, others hinged': { top: 'simple', sides: 'simple', base: 'fixed' },
  'top free, sides hinged, base fixed': { top: 'free', sides: 'simple', base: 'fixed' },
  'sides fixed, others hinged': { top: 'simple', sides: 'fixed', base: 'simple' },
  'top free, sides fixed, base hinged': { top: 'free', sides: 'fixed', base: 'simple' },
}

/** Condition that an edge of the wall is held in one of these ways. */
export const wallEdge = (edge: keyof WallEdges, kinds: readonly EdgeKind[]): Condition => ({
  choice: 'edges',
  is: (Object.keys(wallWords) as WallWord[]).filter(word => kinds.includes(wallEdges[word][edge])),
})
