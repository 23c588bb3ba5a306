import type { PrintedRow } from './printed-line.ts'
import { numberData } from './shown-data.ts'
import { substituted } from './substituted.ts'
import type { CheckLine, Line, Reference } from './workings.ts'

/** The source of a line or limit, where it has one. */
export const sourceData = (reference: Reference | undefined) => (reference ? { source: reference } : {})

/** Which row a line belongs to. */
const rowData = ({ index, of, label }: PrintedRow) => ({ index, of, label })

/** A line that is no check as plain data: what it is, its formula in symbols and with numbers, what it gives. */
export function stepData(line: Exclude<Line, CheckLine>) {
  const base = {
    number: line.number,
    kind: line.kind,
    says: line.says,
    ...(line.row ? { row: rowData(line.row) } : {}),
    ...sourceData(line.reference),
  }
  switch (line.kind) {
    case 'formula':
      return { ...base, name: line.name, ...substituted(line.working), result: numberData(line.result) }
    case 'look':
      return {
        ...base,
        name: line.name,
        table: line.title,
        interpolations: line.interpolations.map(({ working, result }) => ({
          ...substituted(working),
          result: numberData(result),
        })),
        result: numberData(line.result),
      }
    case 'branch':
      return {
        ...base,
        holds: line.holds,
        ...(line.working ? substituted(line.working) : { because: line.because ?? '' }),
      }
    case 'solve':
      return {
        ...base,
        method: line.title,
        verified: line.verified,
        gives: line.gives.map(({ name, printed }) => ({ name, ...numberData(printed.shown) })),
      }
  }
}

/** A check as plain data, its ratio at full precision. */
export function checkData(line: CheckLine) {
  return {
    number: line.number,
    name: line.name,
    says: line.says,
    ...substituted(line.working),
    ...(line.demand ? { demand: numberData(line.demand) } : {}),
    ...(line.capacity ? { capacity: numberData(line.capacity) } : {}),
    ...(line.ratio ? { ratio: line.ratio.value } : {}),
    satisfied: line.satisfied,
    ...doubtsData(line),
    ...sourceData(line.reference),
  }
}

/** What speaks against a check, as two truths: alike in every record of checks. */
export const doubtsData = ({ doubts }: CheckLine) => ({
  outside_limits: doubts.includes('outside limits'),
  methods_differ: doubts.includes('methods differ'),
})
