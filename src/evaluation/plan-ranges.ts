import type { Module, QuantityInput } from '../modules/module.ts'
import { pushOp } from './draft.ts'
import { ownLiteral } from './literal.ts'
import type { Stage } from './module-scope.ts'
import type { Entity, PlannedGiven, PlannedRange } from './plan-types.ts'

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
    pushOp(stage.draft, { guards: [], second: false }, slots => {
      const now = slots[value.slot] ?? Number.NaN
      if (!Number.isFinite(now) || refusing.some(range => !range.keeps(now))) slots[alive] = 0
    })
  }
}

function inputOf(module: Module, where: { list?: string; field: string }): QuantityInput | undefined {
  const list = where.list ? module.inputs[where.list] : undefined
  const input = list?.kind === 'list' ? list.fields[where.field] : module.inputs[where.field]
  return input?.kind === 'quantity' ? input : undefined
}

const slack = 1e-9

function rangesOf(input: QuantityInput, about: { entity: Entity; block: number; alive: number }): PlannedRange[] {
  const si = (text: string): number => ownLiteral(text).si
  const room = (bound: number): number => slack * Math.abs(bound)
  const make = (says: string, refuses: boolean, keeps: (value: number) => boolean): PlannedRange => ({
    ...about,
    says,
    refuses,
    keeps,
  })
  const ranges: PlannedRange[] = []
  const { above, below, least, most, usual } = input
  if (above !== undefined)
    ranges.push(make(`greater than ${above}`, true, value => value > si(above) + room(si(above))))
  if (below !== undefined) ranges.push(make(`less than ${below}`, true, value => value < si(below) - room(si(below))))
  if (least !== undefined) ranges.push(make(`at least ${least}`, true, value => value >= si(least) - room(si(least))))
  if (most !== undefined) ranges.push(make(`at most ${most}`, true, value => value <= si(most) + room(si(most))))
  if (usual) {
    const [from, to] = usual
    const inside = (value: number) => value >= si(from) - room(si(from)) && value <= si(to) + room(si(to))
    ranges.push(make(`usually ${from} to ${to}`, false, inside))
  }
  return ranges
}
