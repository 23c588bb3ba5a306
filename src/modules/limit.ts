import type { Condition } from './condition.ts'
import type { Citation } from './sources.ts'

/** A limit of validity; exceeded, it casts doubt on the checks of its method. `holds` is a condition over inputs and steps, judged as soon as its names are known. */
export interface Limit {
  readonly holds: Condition
  /** A short clause that reads after `outside the limit that` and by itself: `the ratio of the spans is at most 2`. */
  readonly says: string
  /** The limit is one of this choice or optional input only; elsewhere it is left away. */
  readonly when?: Exclude<Condition, { readonly formula: string }>
  /** It is judged for each row of this list, over its fields; `on` is then one of them. */
  readonly each?: string
  /** What the author can do where it is exceeded, for the message only: `swap the two`. */
  readonly advice?: string
  /** `refuse`: nothing after it is evaluated. `warn`: evaluation goes on and the package shows it exceeded. */
  readonly otherwise: 'refuse' | 'warn'
  /** The input, or field of the row, whose place a message points at. */
  readonly on?: string
  readonly source?: Citation
}

/** What a reader must keep in mind: always, or only where a condition holds. */
export type Caution = string | { readonly says: string; readonly when: Condition }
