/** One place where two data differ: `blocks[3].outputs.M_x.shown`, as text. */
export interface DataDifference {
  readonly at: string
  readonly stands: string
  readonly gives: string
}

/**
 * Every leaf in which two JSON data differ, in the order of the first; what only one has is shown as `nothing`. Numbers apart by no more than
 * the last digits of a machine's arithmetic are the same.
 */
export function dataDifferences(stands: unknown, gives: unknown, at = ''): readonly DataDifference[] {
  if (Array.isArray(stands) && Array.isArray(gives))
    return Array.from({ length: Math.max(stands.length, gives.length) }).flatMap((_, index) =>
      dataDifferences(stands[index], gives[index], `${at}[${nameOf(stands[index]) ?? index}]`),
    )
  if (isRecord(stands) && isRecord(gives))
    return [...new Set([...Object.keys(stands), ...Object.keys(gives)])].flatMap(key =>
      dataDifferences(stands[key], gives[key], at === '' ? key : `${at}.${key}`),
    )
  if (isSameNumber(stands, gives) || JSON.stringify(stands) === JSON.stringify(gives)) return []
  return [{ at, stands: textOf(stands), gives: textOf(gives) }]
}

/** The same sum in another order, or a difference of two such sums. */
const noise = 1e-12

const isSameNumber = (a: unknown, b: unknown): boolean =>
  typeof a === 'number' &&
  typeof b === 'number' &&
  Math.abs(a - b) <= noise * Math.max(Math.abs(a), Math.abs(b), smallest)

/** Below it a number is compared as a part of one. */
const smallest = 1e-3

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** Rows are called as they call themselves. */
function nameOf(row: unknown): string | undefined {
  if (!isRecord(row)) return undefined
  return [row.number, row.name].find((name): name is string => typeof name === 'string')
}

const textOf = (value: unknown): string => (value === undefined ? 'nothing' : JSON.stringify(value))
