import type { Unit } from '../quantity/types.ts'
import type { Node } from './types.ts'

/** A temperature over the bare unit of a scale, `T / degC`: the plain number that a thermometer of that scale shows. */
export interface ScaleReading {
  readonly of: Node
  readonly unit: Unit
}

/** The reading that a node is, or undefined. Whether what is read is a temperature on a scale is for the proof. */
export function scaleReading(node: Node): ScaleReading | undefined {
  if (node.kind !== 'arithmetic' || node.op !== '/' || node.right.kind !== 'unit') return undefined
  const { unit } = node.right
  return unit.offset === undefined ? undefined : { of: node.left, unit }
}
