import type { Module, QuantityInput } from '../modules/module.ts'
import { digitsOf } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import { isAtMost, isBelow } from '../quantity/tolerance.ts'
import { pushStop } from './draft-ops.ts'
import { ownLiteral } from './literal.ts'
import type { Stage } from './module-scope.ts'
import type { Entity, PlannedGiven, PlannedRange } from './plan-types.ts'
import { shownWords } from './shown-words.ts'
import { typedShown } from './typed-shown.ts'

/** An input outside what the method allows stops the block before its first step. */
export function planRanges(stage: Stage, given: readonly PlannedGiven[], alive: number): void {
  for (const { value, row, name } of given) {
    if (typeof value === 'string') continue
    const input = inputOf(
      stage.module,
      row ? { list: row.list, field: name.slice(0, name.lastIndexOf('_')) } : { field: name },
    )
    const ranges = input ? rangesOf(input, { entity: value, block: stage.block, alive }) : []
    stage.draft.ranges.push(...ranges)
    const refusing = ranges.filter(range => range.refuses)
    const keeps = (si: number): boolean => Number.isFinite(si) && refusing.every(range => range.keeps(si))
    pushStop(stage.draft, { guards: [], second: false }, { slot: value.slot, keeps, alive })
  }
}

function inputOf(module: Module, where: { list?: string; field: string }): QuantityInput | undefined {
  const list = where.list ? module.inputs[where.list] : undefined
  const input = list?.kind === 'list' ? list.fields[where.field] : module.inputs[where.field]
  return input?.kind === 'quantity' ? input : undefined
}

function rangesOf(input: QuantityInput, about: { entity: Entity; block: number; alive: number }): PlannedRange[] {
  const { above, below, least, most, usual } = input
  // Bounds are read once: the closures run for every changed assumption.
  const si = (text: string): number => ownLiteral(text).si
  const words = (bound: string): string => boundText(bound, about.entity)
  const ranges: PlannedRange[] = []
  const add = (says: string, refuses: boolean, keeps: (value: number) => boolean): void => {
    ranges.push({ ...about, says, refuses, keeps })
  }
  if (above !== undefined) add(`greater than ${words(above)}`, true, isAbove(si(above)))
  if (below !== undefined) add(`less than ${words(below)}`, true, isUnder(si(below)))
  if (least !== undefined) add(`at least ${words(least)}`, true, isFrom(si(least)))
  if (most !== undefined) add(`at most ${words(most)}`, true, isTo(si(most)))
  if (usual) {
    const [from, to] = [isFrom(si(usual[0])), isTo(si(usual[1]))]
    add(`usually ${words(usual[0])} to ${words(usual[1])}`, false, value => from(value) && to(value))
  }
  return ranges
}

/** A bound in the unit that the author typed, or that the value is shown in: to three figures where it is defined in another. */
function boundText(bound: string, { typed, unit: shown }: Entity): string {
  const { digits, unit: own, si } = ownLiteral(bound)
  const unit = typed?.unit ?? shown
  const number = own.text === unit.text ? digits : String(Number(digitsOf(inUnit(si, unit), 3)))
  return shownWords(typedShown({ digits: number, unit }))
}

type Keeps = (value: number) => boolean
const isAbove =
  (bound: number): Keeps =>
  value =>
    isBelow(bound, value)
const isUnder =
  (bound: number): Keeps =>
  value =>
    isBelow(value, bound)
const isFrom =
  (bound: number): Keeps =>
  value =>
    isAtMost(bound, value)
const isTo =
  (bound: number): Keeps =>
  value =>
    isAtMost(value, bound)
