import { readFormula } from '../formula/read-formula.ts'
import type { Formula } from '../formula/types.ts'
import type { Position } from '../modules/numerics/look-in.ts'
import type { Axis } from '../modules/table.ts'
import { fromUnit } from '../quantity/to-unit.ts'
import type { Shown, Unit } from '../quantity/types.ts'
import { unitOf } from '../quantity/unit.ts'
import { lookAt } from './plan-look.ts'
import type { Entity, PlannedLook } from './plan-types.ts'
import { exactOf, type PrintContext, printedOf, siOf } from './print-context.ts'
import { type Loose, printNumbers } from './print-numbers.ts'
import type { LineBase } from './printed-line.ts'
import type { Interpolated, LookedAxis, LookLine } from './workings.ts'

/** A look-up with its neighbourhood: the corner cells as printed in the table, and each interpolation as a line. */
export function printLook(context: PrintContext, line: PlannedLook, base: LineBase): LookLine {
  const found = lookAt(line, context.results.slots)
  if (!found.ok) throw new Error(`a look-up with a value has a place in its table: ${found.says}`)
  const { table, gives, tableUnit } = line
  const rows = indices(found.row)
  const columns = indices(found.column)
  const corners = rows.map(row => columns.map(column => table.cells[row]?.[column] ?? ''))
  const interpolations = interpolate(context, { line, row: found.row, column: found.column, corners })
  const own = interpolations.at(-1)?.result ?? { digits: corners[0]?.[0] ?? '', unit: tableUnit, exact: true }
  const result = own.unit.text === gives.unit.text ? own : inOther(context, gives, own)
  context.printed.set(gives, result)
  return {
    kind: 'look',
    ...base,
    name: gives.name,
    symbol: gives.symbol,
    title: table.title,
    status: table.status,
    rowAxis: axisOf(context, { axis: table.row, key: line.rowKey, at: found.row, interpolations }),
    ...(table.column && line.columnKey !== undefined
      ? { columnAxis: axisOf(context, { axis: table.column, key: line.columnKey, at: found.column, interpolations }) }
      : {}),
    corners,
    unit: tableUnit,
    interpolations,
    result,
  }
}

const indices = ({ lower, upper }: Position): readonly number[] => (lower === upper ? [lower] : [lower, upper])

/** The same value in the unit its step is shown in. */
function inOther(context: PrintContext, gives: Entity, own: Shown): Shown {
  const { result } = printNumbers(context, {
    formula: plainRead('a'),
    operands: new Map([
      [
        'a',
        { value: fromUnit(Number(own.digits), own.unit), unit: own.unit, digits: own.digits, symbol: gives.symbol },
      ],
    ]),
    unit: gives.unit,
  })
  return result
}

interface OfAxis {
  readonly axis: Axis
  readonly key: number | Entity
  readonly at: Position
  readonly interpolations: readonly Interpolated[]
}

/** The key has the digits that the interpolation puts in. */
function axisOf(context: PrintContext, about: OfAxis): LookedAxis {
  const { axis, key, at } = about
  const titles = axis.kind === 'words' ? (axis.titles ?? axis.keys) : axis.keys
  const base = { says: axis.says, lower: titles[at.lower] ?? '', upper: titles[at.upper] ?? '' }
  if (typeof key === 'number') return { ...base, key: titles[key] ?? '' }
  const unit = axis.kind === 'numbers' && axis.unit ? { unit: unitOf(axis.unit) } : {}
  const own = printedOf(context, key)
  const put = about.interpolations
    .map(({ working }) => working.operands.get('x'))
    .find(x => x !== undefined && 'shown' in x && own.to !== undefined && x.to === own.to)
  return { ...base, ...unit, key: put && 'shown' in put ? { ...own, shown: put.shown } : own }
}

interface About {
  readonly line: PlannedLook
  readonly row: Position
  readonly column: Position
  readonly corners: readonly (readonly string[])[]
}

/** Along the columns in each row first, then between the rows; nothing where the key stands on a printed key. */
function interpolate(context: PrintContext, about: About): Interpolated[] {
  const { line, row, column, corners } = about
  const unit = line.tableUnit
  const cell = (text: string): End => ({ value: fromUnit(Number(text), unit), digits: text })
  const lines: Interpolated[] = []
  const along = (
    key: Entity | number | undefined,
    axis: Axis | undefined,
    at: Position,
    ends: { says: string; from: End; to: End },
  ): End => {
    if (at.lower === at.upper || typeof key !== 'object' || axis?.kind !== 'numbers') return ends.from
    const made = between(context, { key, axis, at, unit, ...ends })
    lines.push(made.line)
    return made.end
  }
  const inRow = (corner: readonly string[], index: number): End =>
    along(line.columnKey, line.table.column, column, {
      says: `in the row ${titleOf(line.table.row, index)}`,
      from: cell(corner[0] ?? ''),
      to: cell(corner.at(-1) ?? ''),
    })
  const ends = corners.map((corner, index) => inRow(corner, index === 0 ? row.lower : row.upper))
  const [from, to] = [ends[0], ends.at(-1)]
  if (from && to) along(line.rowKey, line.table.row, row, { says: 'between the rows', from, to })
  return lines
}

interface End {
  readonly value: number
  /** Exact digits of a table's cell. */
  readonly digits?: string
}

const titleOf = (axis: Axis, index: number): string =>
  (axis.kind === 'words' ? (axis.titles ?? axis.keys)[index] : axis.keys[index]) ?? ''

const text = 'a + (b - a) * (x - x_1) / (x_2 - x_1)'

function between(
  context: PrintContext,
  about: {
    key: Entity
    axis: Extract<Axis, { kind: 'numbers' }>
    at: Position
    unit: Unit
    says: string
    from: End
    to: End
  },
): { line: Interpolated; end: End } {
  const { key, axis, at, unit, from, to } = about
  const axisUnit = unitOf(axis.unit)
  const printedKey = (index: number, symbol: string) => {
    const digits = axis.keys[index] ?? ''
    return { value: fromUnit(Number(digits), axisUnit), unit: axisUnit, digits, symbol }
  }
  const looked = siOf(context, key)
  const exact = exactOf(context, key, axisUnit)
  const origin = context.numbering.origins.get(key)
  const operands = new Map<string, Loose>([
    ['a', { ...from, unit, symbol: 'a' }],
    ['b', { ...to, unit, symbol: 'b' }],
    [
      'x',
      {
        value: looked,
        unit: axisUnit,
        symbol: key.symbol,
        ...(exact === undefined ? {} : { digits: exact }),
        ...(origin ? { to: origin.id } : {}),
      },
    ],
    ['x_1', printedKey(at.lower, 'x_1')],
    ['x_2', printedKey(at.upper, 'x_2')],
  ])
  const { working, result } = printNumbers(context, { formula: plainRead(text), operands, unit })
  const value = from.value + (to.value - from.value) * at.weight
  return { line: { says: about.says, working, result }, end: { value } }
}

/** A formula of this file's own. */
function plainRead(formula: string): Formula {
  const read = readFormula(formula)
  if (!read.ok) throw new Error(read.fault.says)
  return read.formula
}
