import { finite, NumericRefusal } from './numeric-refusal.ts'

/** Where a key lies on an axis: its two neighbours and how far it is from the lower (by place in the list) to the upper. */
export type Neighbours = {
  readonly lower: { readonly index: number; readonly key: number }
  readonly upper: { readonly index: number; readonly key: number }
  /** Share of the upper neighbour, 0 to 1; the lower one has the rest. */
  readonly weight: number
  /** The key is a node of the axis: both neighbours are that node. */
  readonly exact: boolean
}

/** A key this near a node (relative to the node, or to the axis where the node is 0) is that node. */
const nodeTolerance = 1e-9

/**
 * Neighbours of `key` on `axis`, whose keys rise or fall throughout. At a node (to 1e-9) both are the node.
 * Refuses an axis that is empty, not finite or not monotonic, and a key that is not finite or outside the axis.
 */
export function locate(axis: readonly number[], key: number, name = 'key'): Neighbours {
  checkAxis(axis)
  finite(key, name)
  const span = Math.abs((axis.at(-1) ?? 0) - (axis[0] ?? 0))
  const node = axis.findIndex(at => Math.abs(key - at) <= nodeTolerance * (at === 0 ? span : Math.abs(at)))
  if (node >= 0) {
    const neighbour = { index: node, key: axis[node] ?? key }
    return { lower: neighbour, upper: neighbour, weight: 0, exact: true }
  }
  return between(axis, key, name)
}

function between(axis: readonly number[], key: number, name: string): Neighbours {
  for (const [index, next] of axis.slice(1).entries()) {
    const before = axis[index] ?? next
    const weight = (key - before) / (next - before)
    if (weight > 0 && weight < 1) {
      return { lower: { index, key: before }, upper: { index: index + 1, key: next }, weight, exact: false }
    }
  }
  const [least, most] = [Math.min(...axis), Math.max(...axis)]
  throw new NumericRefusal(name, `Expected \`${name}\` from ${least} to ${most}, got ${key}`)
}

function checkAxis(axis: readonly number[]): void {
  if (axis.length === 0) throw new NumericRefusal('axis', 'Expected one key at least in `axis`, got none')
  const rises = (axis[1] ?? 0) > (axis[0] ?? 0)
  axis.forEach((at, i) => {
    finite(at, 'axis')
    const before = axis[i - 1]
    if (before === undefined || (at !== before && at > before === rises)) return
    throw new NumericRefusal('axis', `Expected keys of \`axis\` that rise or fall throughout, got ${before} then ${at}`)
  })
}

/** A value read from a row of a table, with what it was read from. */
export type Interpolated = {
  readonly value: number
  readonly at: Neighbours
  /** Values at the lower and upper neighbour. */
  readonly corners: readonly [number, number]
}

/**
 * Value at `key` in a row of `values` over `axis`, straight between neighbours; at a node the value is the node's own.
 * Refuses what `locate` refuses, lists of unlike length, and a neighbour without a finite value (a blank cell).
 */
export function interpolate(table: RowTable, key: number, name = 'key'): Interpolated {
  if (table.values.length !== table.axis.length) throw unlike(table.values.length, table.axis.length)
  const at = locate(table.axis, key, name)
  const corners = [cell(table.values, at.lower.index), cell(table.values, at.upper.index)] as const
  return { value: blend(corners, at), at, corners }
}

export type RowTable = { readonly axis: readonly number[]; readonly values: readonly (number | undefined)[] }

/** A value read from a table of rows and columns, with its neighbourhood: `corners[0]` is the lower row. */
export type InterpolatedTwice = {
  readonly value: number
  readonly row: Neighbours
  readonly column: Neighbours
  readonly corners: readonly [readonly [number, number], readonly [number, number]]
}

export type GridTable = {
  readonly rows: readonly number[]
  readonly columns: readonly number[]
  readonly values: readonly (readonly (number | undefined)[])[]
}

/**
 * Value at a row key and a column key, straight along each axis (first along the two rows, then between them).
 * Refuses what `interpolate` refuses, naming the key `row` or `column` unless `names` says otherwise.
 */
export function interpolateTwice(
  table: GridTable,
  keys: GridKeys,
  names: Readonly<Record<keyof GridKeys, string>> = gridNames,
): InterpolatedTwice {
  if (table.values.length !== table.rows.length) throw unlike(table.values.length, table.rows.length)
  const row = locate(table.rows, keys.row, names.row)
  const alongRow = (index: number) => {
    return interpolate({ axis: table.columns, values: table.values[index] ?? [] }, keys.column, names.column)
  }
  const [lower, upper] = [alongRow(row.lower.index), alongRow(row.upper.index)]
  const value = blend([lower.value, upper.value], row)
  return { value, row, column: lower.at, corners: [lower.corners, upper.corners] }
}

export type GridKeys = { readonly row: number; readonly column: number }

const gridNames = { row: 'row', column: 'column' }

// At a node the value is the node's own: no product, no rounding.
function blend([lower, upper]: readonly [number, number], { exact, weight }: Neighbours): number {
  return exact ? lower : lower * (1 - weight) + upper * weight
}

function cell(values: readonly (number | undefined)[], index: number): number {
  const value = values[index]
  if (value !== undefined && Number.isFinite(value)) return value
  throw new NumericRefusal('values', `Expected a value in cell ${index + 1} of \`values\`, got a blank`)
}

function unlike(values: number, keys: number): NumericRefusal {
  return new NumericRefusal('values', `Expected as many \`values\` as keys, got ${values} for ${keys}`)
}
