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
  const ranges: PlannedRange[] = []
  const refuse = (says: string, text: string | undefined, keeps: (bound: number) => Keeps): void => {
    if (text === undefined) return
    const { si, words } = boundOf(text, about.entity)
    ranges.push({ ...about, says: `${says} ${words}`, refuses: true, keeps: keeps(si) })
  }
  refuse('greater than', above, isAbove)
  refuse('less than', below, isUnder)
  refuse('at least', least, isFrom)
  refuse('at most', most, isTo)
  if (usual) {
    const [from, to] = [boundOf(usual[0], about.entity), boundOf(usual[1], about.entity)]
    const [isFromFirst, isToLast] = [isFrom(from.si), isTo(to.si)]
    const keeps = (value: number): boolean => isFromFirst(value) && isToLast(value)
    ranges.push({ ...about, says: `usually ${from.words} to ${to.words}`, refuses: false, keeps })
  }
  return ranges
}

interface Bound {
  readonly si: number
  readonly words: string
}

/** A bound with its words in the unit that the author typed, or that the value is shown in: to three figures where it is defined in another. */
function boundOf(text: string, { typed, unit: shown }: Entity): Bound {
  const { digits, unit: own, si } = ownLiteral(text)
  const unit = typed?.unit ?? shown
  const number = own.text === unit.text ? digits : String(Number(digitsOf(inUnit(si, unit), 3)))
  return { si, words: shownWords(typedShown({ digits: number, unit })) }
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
