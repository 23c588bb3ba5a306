import type { Token } from './token.ts'

/**
 * The help at a number with a comma and three digits behind it, `2,500`: in some countries that is two thousand and more, in others
 * two and a half, and in a call it may be two arguments. `typed` is what stands before the comma, `after` what follows it.
 */
export function groupedComma(before: string, { typed, after }: { typed: string; after: string }): string {
  const groups = /^(?:[,_]\d+)*/.exec(after)?.[0] ?? ''
  const joined = `\`${typed}${groups.replace(/[,_]/g, '')}\``
  const isOne = /^,\d{3}$/.test(groups)
  const pointed = `\`${typed}.${after.slice(1, 4)}\``
  if (isOne && isArgument(before)) return `Write ${joined}, or a blank behind a comma between two arguments`
  if (!isOne || !/^\d+$/.test(typed)) return `Write ${joined}`
  return /^0+$/.test(typed) ? pointHelp(pointed) : `Write ${joined}, or ${pointed} where the comma is a decimal point`
}

/** Whether the innermost bracket that is open is that of a call. */
function isArgument(before: string): boolean {
  const open = before.replace(/\([^()]*\)/g, '')
  return open === before ? /[\p{L}\d_]\s*\([^(]*$/u.test(open) : isArgument(open)
}

/** The help at a comma that stands where only the decimal point can be meant, `2,5 kPa`; nothing where it may part two things. */
export function decimalComma(tokens: readonly Token[], at: number): string | undefined {
  const [left, comma, right, next] = tokens.slice(at - 1, at + 3)
  if (left?.kind !== 'number' || !comma || !right || next?.kind === ',') return undefined
  const digits = right.kind === 'quantity' ? right.number : right.kind === 'number' ? right.text : ''
  if (!/^\d+$/.test(left.text) || !/^\d/.test(digits) || digits.includes('.')) return undefined
  const isClose = left.span.end === comma.span.start && comma.span.end === right.span.start
  return isClose ? pointHelp(`\`${left.text}.${digits}\``) : undefined
}

const pointHelp = (number: string): string => `Write the decimal point, as in ${number}`
