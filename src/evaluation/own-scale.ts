import { scaleReading } from '../formula/scale-reading.ts'
import type { Formula, Node } from '../formula/types.ts'
import type { Unit } from '../quantity/types.ts'
import { arithmetic, mapNode, nowhere } from './interpolation.ts'
import type { Operands } from './plan-types.ts'

/**
 * The formula as it is worked out by hand where it reads a temperature on another scale than the one it is shown in: `T / degC` of
 * 68 °F is written `(T / degF - 32) / 1.8`. The formula itself where it reads none so.
 */
export function onOwnScale(formula: Formula, operands: Operands): Formula {
  let found = false
  const write = (node: Node): Node => {
    const reading = scaleReading(node)
    const shown = reading?.of.kind === 'name' ? operands.get(reading.of.name) : undefined
    if (!reading || !shown || !('kind' in shown) || shown.kind !== 'number' || shown.unit.text === reading.unit.text)
      return mapNode(node, write)
    found = true
    return converted(over(reading.of, { kind: 'unit', unit: shown.unit, span: nowhere }), reading.unit)
  }
  const tree = write(formula.tree)
  return found ? { ...formula, tree } : formula
}

/** From the one scale of the closed list to the other. */
function converted(shown: Node, to: Unit): Node {
  if (to.text === 'degC') return over(arithmetic('-', shown, number('32')), number('1.8'))
  if (to.text === 'degF') return arithmetic('+', arithmetic('*', number('1.8'), shown), number('32'))
  throw new Error(`no way is known to the scale of \`${to.text}\``)
}

const over = (left: Node, right: Node): Node => arithmetic('/', left, right)
const number = (text: string): Node => ({ kind: 'number', value: Number(text), text, span: nowhere })
