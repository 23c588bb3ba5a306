import type { Place } from '../diagnostic/diagnostic.ts'
import type { Shown } from '../quantity/types.ts'
import type { Entity } from './plan-types.ts'
import type { Reference } from './workings.ts'

/**
 * What stands at one place of the trace. `given` is an input of a calculation, `step` a formula, `look` a value from a table, `method` a
 * numerical method, `agreement` two methods compared, `text` a sentence of the author's that shows a value.
 */
export type TraceKind =
  | 'assumption'
  | 'given'
  | 'step'
  | 'look'
  | 'method'
  | 'branch'
  | 'check'
  | 'limit'
  | 'agreement'
  | 'table'
  | 'text'

/** One place of the trace, before it is known who uses it. */
export interface Spot {
  /** Its name where it has one, otherwise its anchor on the page. */
  readonly id: string
  readonly kind: TraceKind
  /** As the author refers to it, `roof.M_x`; `''` where it cannot be referred to. */
  readonly name: string
  /** `4.07`, `A3`; `''` where it has none. */
  readonly number: string
  readonly symbol: string
  /** As the package prints it, or words; absent where it was not evaluated. */
  readonly value?: Shown | string
  /** The number behind the value. */
  readonly entity?: Entity
  readonly says: string
  /** In the names of its own block. */
  readonly formula?: string
  readonly reference?: Reference
  /** What else a reviewer must know: a hold, a default, where a word was taken from. */
  readonly note?: string
  /** Absent for a published table, which stands in no notebook. */
  readonly place?: Place
  /** Ids of what it uses directly, in the order of its formula. */
  readonly restsOn: readonly string[]
}

export interface TraceNode extends Spot {
  /** Ids of what uses it directly, in the package's order. */
  readonly usedBy: readonly string[]
}

/** Who uses whom, over the whole notebook: by id, in the package's order. */
export type TraceGraph = ReadonlyMap<string, TraceNode>
