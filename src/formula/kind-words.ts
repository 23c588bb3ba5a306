import { dimensionWords } from '../quantity/dimension-names.ts'
import { displayPoint, displayUnit } from '../quantity/display-unit.ts'
import type { System } from '../quantity/types.ts'
import type { FunctionName, Kind, Node } from './types.ts'

export type ValueKind = Extract<Kind, { kind: 'value' }>

/** `a pressure (kN/m^2)`, `a temperature on a scale (degC)`: a value as a message says it. */
export function valueWords({ dimension, point }: Omit<ValueKind, 'kind'>, system: System): string {
  return point ? `a temperature on a scale (${displayPoint(system).text})` : dimensionWords(dimension, system)
}

/** Anything a name can stand for, as a message says it. */
export function kindWords(kind: Kind, system: System): string {
  return kind.kind === 'value'
    ? valueWords(kind, system)
    : { list: 'a list', table: 'a table', truth: 'a condition' }[kind.kind]
}

/** A sentence begins with it. */
export const begun = (words: string): string => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`

/** `Write 0 kPa`, where one of two unlike values is a plain nought. */
export function zeroHelp(nodes: readonly Node[], kinds: readonly ValueKind[], system: System): string | undefined {
  const zero = nodes.findIndex(node => node.kind === 'number' && node.value === 0)
  const other = kinds[1 - zero]
  return zero < 0 || !other ? undefined : `Write \`0 ${displayUnit(other.dimension, system).text}\``
}

/** How to make a plain number of a value. */
export function divideHelp({ dimension }: ValueKind, system: System): string {
  const unit = displayUnit(dimension, system).text
  return `Divide by a unit: \`... / ${/[*/]/.test(unit) ? `(${unit})` : unit}\``
}

export const differenceHelp = 'Write `K` for a temperature difference'

export const mixedPoints = (who: string): string =>
  `${who} mixes a temperature on a scale with a temperature difference`

/** What a function takes, as the subject of a sentence. */
export const argumentOf = (fn: FunctionName): string => `What \`${fn}\` takes`
