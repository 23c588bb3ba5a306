import { nearestName } from '../diagnostic/nearest-name.ts'
import { writtenAt } from './lines.ts'
import { error, type Reading } from './reading.ts'
import type { Written } from './types.ts'

const attribute = /\s*([^\s=}]+)(?:\s*=\s*("[^"]*"|'[^']*'|[^\s"'<=>`}]+))?/y

/**
 * Returns what stands in the braces of a reference, `{unit="kip*ft/ft" figures=3}`, by key. Refuses, with a report and
 * nothing returned, a key that is not `known`, one given twice and one without a value.
 */
export function readAttributes(
  braces: { readonly text: string; readonly from: number } | undefined,
  { known, reading }: { readonly known: readonly string[]; readonly reading: Reading },
): ReadonlyMap<string, Written> | undefined {
  const found = new Map<string, Written>()
  if (braces === undefined) return found
  const inside = braces.text.slice(0, -1)
  attribute.lastIndex = 1
  for (let match = attribute.exec(inside); match !== null; match = attribute.exec(inside)) {
    const [whole, key = '', value = ''] = match
    const end = braces.from + match.index + whole.length
    const start = braces.from + match.index + whole.length - whole.trimStart().length
    const says = !known.includes(key)
      ? `A reference has no \`${key}\``
      : found.has(key)
        ? `\`${key}\` is given twice`
        : value === ''
          ? `\`${key}\` has no value`
          : undefined
    if (says !== undefined) {
      const near = nearestName(key, known)
      const help = known.length === 0 ? 'Leave the braces out' : `Write ${near ?? known.join(' or ')}="..."`
      error(reading, 'mention-form', { place: writtenAt(reading.lines, start, end).place, says, help })
      return undefined
    }
    const quotes = /^["']/.test(value) ? 1 : 0
    found.set(key, writtenAt(reading.lines, end - value.length + quotes, end - quotes))
  }
  return found
}
