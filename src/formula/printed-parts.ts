import type { Shown, Unit } from '../quantity/types.ts'
import { unitInLine } from './bare-unit.ts'
import type { Node } from './types.ts'

/** What is printed for a name; a list where the name stands for several values. */
export type ShownOf<S extends Shown = Shown> = (name: string) => S | readonly S[]

/** The values that a name stands for. */
export const several = <S extends Shown>(shown: S | readonly S[]): readonly S[] => ('digits' in shown ? [shown] : shown)

/** How a printer writes one number, with its unit where it has one in the line. */
export type WriteNumber<T> = (digits: string, unit: Unit | undefined) => T

/** The values of a name as a printer writes numbers; `bare`: units are left away, but for those that belong to their number. */
export function valuesOf<T>(
  shownOf: ShownOf,
  { bare, write }: { readonly bare: boolean; readonly write: WriteNumber<T> },
): (name: string) => readonly T[] {
  return name => several(shownOf(name)).map(({ digits, unit }) => write(digits, unitInLine(unit, bare)))
}

/** How a printer writes the parts of a call. */
export interface CallParts<T> {
  readonly of: (node: Node) => T
  /** A name that has no number: the table of `interpolate`. */
  readonly table: (name: string) => T
  /** The values of a name in `min` and `max`, where a list counts value by value. */
  readonly members: (name: string) => readonly T[]
}

/** The arguments of a call in the order they are printed. */
export function callArguments<T>(
  { fn, args }: Extract<Node, { kind: 'call' }>,
  { of, table, members }: CallParts<T>,
): readonly T[] {
  return args.flatMap((arg, at) => {
    if (arg.kind !== 'name') return [of(arg)]
    if (fn === 'interpolate' && at === 0) return [table(arg.name)]
    return fn === 'min' || fn === 'max' ? members(arg.name) : [of(arg)]
  })
}
