import type { DimensionName } from './dimension-name.ts'
import type { Citation } from './sources.ts'

/** The unit a value is shown in, for each system. */
export interface UnitChoice {
  readonly SI: string
  readonly US: string
}

/**
 * A quantity an author must give. Range texts are quantities (`'0 mm'`): outside `above`/`below`/`least`/`most` the
 * method has no meaning and the input is refused; outside `usual` the author is warned.
 */
export interface QuantityInput {
  readonly kind: 'quantity'
  readonly dimension: DimensionName
  readonly says: string
  /** More for the author: it stands on the module's page of the manual, not in a package. The other inputs have it too. */
  readonly note?: string
  /** How it is typeset; the input's own name when absent. */
  readonly symbol?: string
  /** Shown in degC and degF: then it is a temperature on a scale, and a difference is refused; otherwise a scale is. */
  readonly unit?: UnitChoice
  readonly above?: string
  readonly below?: string
  readonly least?: string
  readonly most?: string
  readonly usual?: readonly [string, string]
  /** Taken, and said in the package, when the author gives none. */
  readonly default?: string
  /** The author may leave it out; then `when({ given: name })` is false and no step may use it elsewhere. */
  readonly optional?: true
  /** It has a part only with these words of a choice before it. Elsewhere it may be left out, its default is not shown, and a value given is marked. */
  readonly when?: { readonly choice: string; readonly is: readonly string[] }
  readonly source?: Citation
}

/** One of a few words. `words` gives each word its meaning. */
export interface ChoiceInput {
  readonly kind: 'choice'
  readonly says: string
  readonly note?: string
  readonly words: Readonly<Record<string, string>>
  readonly default?: string
}

/** Free text that names a row. It has no effect on any number. */
export interface LabelInput {
  readonly kind: 'label'
  readonly says: string
  readonly note?: string
  readonly optional?: true
}

/** Rows, each with the same fields. */
export interface ListInput {
  readonly kind: 'list'
  readonly says: string
  readonly note?: string
  readonly fields: Readonly<Record<string, QuantityInput | ChoiceInput | LabelInput>>
  readonly least: number
  readonly most: number
}

/** What a block asks of its author. */
export type Input = QuantityInput | ChoiceInput | LabelInput | ListInput
