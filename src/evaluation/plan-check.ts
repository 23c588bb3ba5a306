import { compileNode } from '../formula/compile.ts'
import type { FunctionName, Node } from '../formula/types.ts'
import type { CheckStep } from '../modules/module.ts'
import type { Unit } from '../quantity/types.ts'
import type { Draft } from './draft.ts'
import { addLine, findFor, lineBase, type Stage, truthOf } from './module-scope.ts'
import { type Find, proveIn, seatOf } from './operands.ts'
import type { Operands, PlannedCheck } from './plan-types.ts'
import { resultUnit } from './result-unit.ts'

/** Plans a check of a module. */
export function planCheck(stage: Stage, step: CheckStep): void {
  const { formula, operands, compiled, slot } = truthOf(stage, step.formula)
  const sides = sidesOf(stage.draft, formula.tree, { operands, find: findFor(stage) })
  const { name, aspect } = step
  addLine(stage, {
    kind: 'check',
    ...lineBase(stage, step),
    name,
    formula,
    operands,
    compiled,
    slot,
    ...(sides ? { sides } : {}),
    ...(aspect ? { aspect } : {}),
  })
}

/** Demand and capacity of a single comparison with `<`, `<=`, `>` or `>=`: the smaller side is the demand. */
export function sidesOf(draft: Draft, tree: Node, about: { operands: Operands; find: Find }): PlannedCheck['sides'] {
  if (tree.kind !== 'comparison' || tree.op === '==' || tree.op === '!=') return undefined
  const demandLeft = tree.op === '<' || tree.op === '<='
  const [demand, capacity] = demandLeft ? [tree.left, tree.right] : [tree.right, tree.left]
  const unit = unitOfSide(demand, about.operands) ?? unitOfSide(capacity, about.operands)
  const seat = (name: string) => {
    const found = about.find(name)
    if (!found) throw new Error(`check: nothing is called \`${name}\``)
    return seatOf(found)
  }
  const plain = unit ?? resultUnit(draft, { dimension: dimensionOfSide(draft, demand, about.find) })
  return { demand: compileNode(demand, seat), capacity: compileNode(capacity, seat), unit: plain, demandLeft }
}

/** What keeps the unit of its parts. */
const keeping: ReadonlySet<FunctionName> = new Set(['abs', 'min', 'max'])

/** The unit in which a side is read: that of its value, or of the first part of it that has one where the parts are of one kind. */
function unitOfSide(side: Node, operands: Operands): Unit | undefined {
  if (side.kind === 'quantity') return side.unit
  const parts = partsOf(side)
  if (parts) return parts.map(part => unitOfSide(part, operands)).find(unit => unit)
  const found = side.kind === 'name' ? operands.get(side.name) : undefined
  return found && 'kind' in found && found.kind === 'number' ? found.unit : undefined
}

function partsOf(side: Node): readonly Node[] | undefined {
  if (side.kind === 'negative') return [side.of]
  if (side.kind === 'call' && keeping.has(side.fn)) return side.args
  if (side.kind === 'arithmetic' && (side.op === '+' || side.op === '-')) return [side.left, side.right]
  return undefined
}

function dimensionOfSide(draft: Draft, side: Node, find: Find) {
  const proof = proveIn(draft, { text: '', tree: side, names: [] }, find)
  if (!proof.ok || proof.result.kind !== 'value') throw new Error('a side of a check is a number')
  return proof.result.dimension
}
