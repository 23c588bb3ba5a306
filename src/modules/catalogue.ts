import { raftReaction } from './concrete/raft-reaction.ts'
import { roofLoad } from './concrete/roof-load.ts'
import { airSupply } from './living/air-supply.ts'
import type { Module } from './module.ts'
import { halvingLayers } from './shielding/halving-layers.ts'

/** Every module, listed once, by hand, in the order of the job. */
export const catalogue: readonly Module[] = [roofLoad, raftReaction, halvingLayers, airSupply]
