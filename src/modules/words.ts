import type { DimensionName } from './dimension-name.ts'
import type { Method } from './method.ts'
import type {
  CarriedStep,
  CheckStep,
  ChoiceInput,
  Condition,
  EachStep,
  FormulaStep,
  LabelInput,
  Limit,
  ListInput,
  LookStep,
  MadeRows,
  PairsStep,
  QuantityInput,
  SolveStep,
  Step,
  TakeStep,
  WhenStep,
} from './module.ts'
import type { Table } from './table.ts'

type Asked = Omit<QuantityInput, 'kind' | 'dimension'>

/** An input of any named dimension. */
export const quantity = (dimension: DimensionName, asked: Asked): QuantityInput => ({
  kind: 'quantity',
  dimension,
  ...asked,
})
/** A length. */
export const length = (asked: Asked): QuantityInput => quantity('length', asked)
/** A plain number. */
export const ratio = (asked: Asked): QuantityInput => quantity('ratio', asked)
/** An angle. */
export const angle = (asked: Asked): QuantityInput => quantity('angle', asked)
/** A pressure. */
export const pressure = (asked: Asked): QuantityInput => quantity('pressure', asked)
/** A unit weight, a force per volume. */
export const unitWeight = (asked: Asked): QuantityInput => quantity('unit_weight', asked)

/** One of a few words. */
export const choice = (asked: Omit<ChoiceInput, 'kind'>): ChoiceInput => ({ kind: 'choice', ...asked })
/** Free text that names a row or a block. */
export const label = (asked: Omit<LabelInput, 'kind'>): LabelInput => ({ kind: 'label', ...asked })
/** Rows, each with the same fields; `says` is what the rows are. */
export const list = (says: string, asked: Omit<ListInput, 'kind' | 'says'>): ListInput => ({
  kind: 'list',
  says,
  ...asked,
})

/** One line of working. */
export const step = (
  name: string,
  formula: string,
  more: Omit<FormulaStep, 'kind' | 'name' | 'formula'>,
): FormulaStep => ({
  kind: 'step',
  name,
  formula,
  ...more,
})
/** A value from a published table. */
export const look = (name: string, table: Table, more: Omit<LookStep, 'kind' | 'name' | 'table'>): LookStep => ({
  kind: 'look',
  name,
  table,
  ...more,
})
/** The same steps for each row of a list. */
export const each = (listName: string, steps: readonly Step[]): EachStep => ({ kind: 'each', list: listName, steps })
/** The same steps for each of so many parts that the method itself makes. */
export const eachPart = (listName: string, made: MadeRows, steps: readonly Step[]): EachStep => ({
  kind: 'each',
  list: listName,
  steps,
  made,
})
/** Steps for each two neighbouring rows of a list. */
export const pairs = (listName: string, steps: readonly Step[]): PairsStep => ({ kind: 'pairs', list: listName, steps })
/** A value handed from row to row. */
export const carried = (name: string, more: Omit<CarriedStep, 'kind' | 'name'>): CarriedStep => ({
  kind: 'carried',
  name,
  ...more,
})
/** A value of the first or last row. */
export const take = (name: string, more: Omit<TakeStep, 'kind' | 'name'>): TakeStep => ({ kind: 'take', name, ...more })
/** A branch. */
export const when = (
  condition: Condition,
  more: { says?: string; yes: readonly Step[]; no?: readonly Step[] },
): WhenStep => ({ kind: 'when', condition, ...more, no: more.no ?? [] })
/** A numerical method. */
export const solve = (method: Method, more: Omit<SolveStep, 'kind' | 'method'>): SolveStep => ({
  kind: 'solve',
  method,
  ...more,
})
/** A comparison that is satisfied or not satisfied. */
export const check = (
  name: string,
  formula: string,
  more: Omit<CheckStep, 'kind' | 'name' | 'formula'>,
): CheckStep => ({
  kind: 'check',
  name,
  formula,
  ...more,
})
/** A limit of validity over a choice. */
export const choiceLimit = (choice: string, is: readonly string[], more: Omit<Limit, 'holds'>): Limit => ({
  holds: { choice, is },
  ...more,
})
/** A limit of validity over numbers. */
export const limit = (formula: string, more: Omit<Limit, 'holds'>): Limit => ({ holds: { formula }, ...more })
