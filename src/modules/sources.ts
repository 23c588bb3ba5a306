import { concreteSources } from './concrete/concrete-sources.ts'
import { groundSources } from './ground/ground-sources.ts'
import { livingSources } from './living/living-sources.ts'
import { powerSources } from './power/power-sources.ts'
import { sharedSources } from './shared-sources.ts'
import { shieldingSources } from './shielding/shielding-sources.ts'

/** Every cited source, once: the wings' own and those of several wings. Keys are what `:cite[...]` takes. */
export const sources = {
  ...groundSources,
  ...concreteSources,
  ...shieldingSources,
  ...livingSources,
  ...powerSources,
  ...sharedSources,
} as const

export type SourceKey = keyof typeof sources

/** A place in a source: clause, table, equation. */
export interface Citation {
  readonly key: SourceKey
  readonly at: string
}

/** A citation of a known source. */
export const cite = (key: SourceKey, at = ''): Citation => ({ key, at })
