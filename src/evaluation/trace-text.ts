import type { Place } from '../diagnostic/diagnostic.ts'
import type { Results } from './evaluate.ts'
import type { Spot } from './trace-types.ts'

/** The author's sentences that show a value, each with the words round it. */
export function textSpots({ plan }: Results): Spot[] {
  const { mentions, text } = plan.notebook
  return mentions.flatMap((mention, index): Spot[] => {
    if (mention.kind !== 'value') return []
    const { place, name } = mention
    const base = { id: `m-${index + 1}`, kind: 'text', name: '', number: '', symbol: '', place } as const
    return [{ ...base, says: wordsAround(text, place), restsOn: [name.text] }]
  })
}

/** As many characters on each side as tell one sentence from another. */
const beside = 32

/** The mention with what stands beside it on its line, parted between words. */
function wordsAround(text: string, { offset, end }: Place): string {
  const from = offset - (/[^\r\n]*$/.exec(text.slice(Math.max(0, offset - 200), offset))?.[0].length ?? 0)
  const to = end + (/^[^\r\n]*/.exec(text.slice(end, end + 200))?.[0].length ?? 0)
  const before = text.slice(from, offset)
  const after = text.slice(end, to)
  const start = before.length <= beside ? before : `… ${before.slice(-beside).replace(/^\S*\s/, '')}`
  const rest = after.length <= beside ? after : `${after.slice(0, beside).replace(/\s\S*$/, '')} …`
  return `${start}${text.slice(offset, end)}${rest}`.trim()
}
