import type { Module } from '../module.ts'
import { falloutDecay } from './fallout-decay.ts'
import { gammaSlab } from './gamma-slab.ts'
import { halvingLayers } from './halving-layers.ts'
import { passageBends } from './passage-bends.ts'
import { pipeStreaming } from './pipe-streaming.ts'
import { protectionSummary } from './protection-summary.ts'
import { roofProtection } from './roof-protection.ts'

/** The modules of the shielding, listed by hand, in the order of the job. */
export const shieldingModules: readonly Module[] = [
  halvingLayers,
  gammaSlab,
  falloutDecay,
  roofProtection,
  passageBends,
  pipeStreaming,
  protectionSummary,
]
