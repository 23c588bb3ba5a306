import type { DimensionName } from './dimension-name.ts'
import type { LedgerKey } from './ledger.ts'
import type { Method } from './method.ts'
import type { Drawing, SketchView } from './sketch.ts'
import type { Citation } from './sources.ts'
import type { Table } from './table.ts'

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
  /** It has a part only with these words of a choice before it. Elsewhere its default is not shown, and a value given is marked. */
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

export type Input = QuantityInput | ChoiceInput | LabelInput | ListInput

/** A condition on a choice, on whether an optional input was given, or on numbers. */
export type Condition =
  | { readonly choice: string; readonly is: readonly string[] }
  | { readonly given: string }
  | { readonly formula: string }

/** One line of working: `name = formula`. Names are inputs, earlier steps, and in `each` the fields of the row. */
export interface FormulaStep {
  readonly kind: 'step'
  readonly name: string
  readonly formula: string
  readonly says: string
  readonly symbol?: string
  readonly unit?: UnitChoice
  readonly source?: Citation
}

/** A value read from a published table. `row` and `column` name a choice (axis of words) or a value (axis of numbers). */
export interface LookStep {
  readonly kind: 'look'
  readonly name: string
  readonly table: Table
  readonly row: string
  readonly column?: string
  readonly says: string
  readonly symbol?: string
  readonly unit?: UnitChoice
}

/** The same steps for each row of a list. Outside, `list.name` is the list of the rows' values: `sum(layers.n)`. */
export interface EachStep {
  readonly kind: 'each'
  readonly list: string
  readonly steps: readonly Step[]
}

/**
 * Steps for each two neighbouring rows of a list of two rows or more, for what lies between them. They belong to the later of the two,
 * so that the first row has none: `sum(points.area)` sums one value fewer than there are rows. A field or step of the earlier row is
 * called by its name with `prev_` before it: `z - prev_z`.
 */
export interface PairsStep {
  readonly kind: 'pairs'
  readonly list: string
  readonly steps: readonly Step[]
}

/** Inside `each`: in the first row `name = first`; in later rows `name` = the value of `next` in the row before. */
export interface CarriedStep {
  readonly kind: 'carried'
  readonly name: string
  readonly first: string
  readonly next: string
  readonly says: string
  readonly symbol?: string
  readonly unit?: UnitChoice
}

/** After `each`: `name` = the value of `of` in the first or last row. */
export interface TakeStep {
  readonly kind: 'take'
  readonly name: string
  readonly list: string
  readonly of: string
  readonly from: 'first' | 'last'
  readonly says: string
  readonly symbol?: string
  readonly unit?: UnitChoice
}

/** A branch. Both sides are proved; one is evaluated and printed, after a line with the condition that chose it. */
export interface WhenStep {
  readonly kind: 'when'
  readonly condition: Condition
  /**
   * Says what the condition means, for print: `the wall is below the water level`. Without it the branch has no line: for a choice or
   * an optional input, which the list of given values shows, where an earlier line or the steps themselves tell what was chosen; for
   * numbers, where a check of the same comparison stands before. Over a choice it reads true of the side `yes` and is printed only there.
   */
  readonly says?: string
  readonly yes: readonly Step[]
  readonly no: readonly Step[]
}

export interface Given {
  readonly dimension: DimensionName
  readonly name: string
  readonly says: string
  readonly symbol?: string
  readonly unit?: UnitChoice
  /** A plain whole number, as the day of a month: it is printed without noughts behind it. */
  readonly whole?: true
}

/** A numerical method: what goes in (formulas, or lists as `{ list: 'diagram.z' }`), what comes out. */
export interface SolveStep {
  readonly kind: 'solve'
  readonly method: Method
  readonly takes: Readonly<Record<string, string | { readonly list: string }>>
  /** Words the method takes: the name of a choice, or a fixed word. */
  readonly words?: Readonly<Record<string, { readonly choice: string } | { readonly word: string }>>
  /** The method's own output name to the value it gives here. */
  readonly gives: Readonly<Record<string, Given>>
  readonly says: string
  readonly source?: Citation
}

/** What a check is about: strength, stability and service by default; `geometry`: whether things fit. The cover ranks the two apart. */
export type CheckAspect = 'strength' | 'geometry'

/** A comparison `demand <= capacity` or `capacity >= demand`, satisfied or not. */
export interface CheckStep {
  readonly kind: 'check'
  readonly name: string
  readonly formula: string
  readonly says: string
  readonly aspect?: CheckAspect
  readonly source?: Citation
}

export type Step =
  | FormulaStep
  | LookStep
  | EachStep
  | PairsStep
  | CarriedStep
  | TakeStep
  | WhenStep
  | SolveStep
  | CheckStep

/** A limit of validity; exceeded, it casts doubt on the checks of its method. `holds` is a condition over inputs and steps, judged as soon as its names are known. */
export interface Limit {
  readonly holds: Condition
  /** A short clause that reads after `outside the limit that` and by itself: `the ratio of the spans is at most 2`. */
  readonly says: string
  /** The limit is one of this choice or optional input only; elsewhere it is left away. */
  readonly when?: Exclude<Condition, { readonly formula: string }>
  /** What the author can do where it is exceeded, for the message only: `swap the two`. */
  readonly advice?: string
  /** `refuse`: nothing after it is evaluated. `warn`: evaluation goes on and the package shows it exceeded. */
  readonly otherwise: 'refuse' | 'warn'
  /** The input whose place a message points at. */
  readonly on?: string
  readonly source?: Citation
}

export type Caution = string | { readonly says: string; readonly when: Condition }

/**
 * The independent method. Its steps see the module's inputs and steps, and may be checks as well; `compare` says which results must
 * agree, how well and why.
 */
export interface Second {
  readonly title: string
  readonly says: string
  /**
   * Limits of this method alone, over its own steps too: exceeded, they cast doubt on its own checks. One that refuses leaves this
   * method out and stops nothing else; it stands before those that say less.
   */
  readonly limits?: readonly Limit[]
  /** Evaluated only when this holds; otherwise the package says why there is no second method here. */
  readonly when?: { readonly condition: Condition; readonly otherwise: string }
  readonly steps: readonly Step[]
  readonly compare: readonly Comparison[]
}

export interface Comparison {
  readonly first: string
  readonly second: string
  /** Largest relative difference |second - first| / |first| that counts as agreement, 0 to 1. */
  readonly band: number
  readonly says: string
  readonly when?: Condition
}

/** An input of a published case as an author would write it: an expression, a word, or rows. */
export type CaseInput = string | readonly Readonly<Record<string, string>>[]

/** A published case: the tests run it and the package's record prints it, answer beside ours. */
export interface PublishedCase {
  readonly id: string
  /** The source as a reader would look it up: author, title, edition, table, page. */
  readonly source: string
  readonly status: 'looked up' | 'memory' | 'computed'
  readonly says: string
  readonly inputs: Readonly<Record<string, CaseInput>>
  /** Output name to the answer as printed: `'57.5 kN/m'`. */
  readonly answers: Readonly<Record<string, string>>
  /** Absent: half a unit in the answer's last printed digit. `{ relative: 0.005 }`, or `{ units: 1 }` in the last printed digit. */
  readonly tolerance?: { readonly relative: number } | { readonly units: number }
}

/**
 * A schedule to be handed on: a table of its own in the package, and as CSV. Either a row of it for each row of a list, with fields and
 * steps of the row as columns; or a line of it for each of some values.
 */
export type Schedule =
  | { readonly title: string; readonly list: string; readonly columns: readonly string[] }
  | { readonly title: string; readonly lines: readonly string[] }

export interface Module {
  readonly id: string
  readonly version: string
  readonly title: string
  /** The question it answers. */
  readonly asks: string
  /** The code it belongs to, where it belongs to one: `IS 456:2000`. */
  readonly code?: string
  readonly inputs: Readonly<Record<string, Input>>
  readonly steps: readonly Step[]
  /** The names an author mostly wants, in order. */
  readonly results: readonly string[]
  /** The limit states and services of the ledger that it answers. */
  readonly covers?: readonly LedgerKey[]
  /** Inputs and results that go to the drawings, in order. */
  readonly drawing?: readonly string[]
  readonly schedule?: Schedule
  readonly limits: readonly Limit[]
  readonly cautions: readonly Caution[]
  readonly second?: Second
  readonly sketch?: (view: SketchView) => Drawing
  readonly published: readonly PublishedCase[]
  /** The inputs of a block to paste, one that evaluates. */
  readonly example: Readonly<Record<string, CaseInput>>
}

/** Returns its argument, checked against the type of a module. */
export function defineModule(module: Module): Module {
  return module
}
