import { slips } from '../diagnostic/slips.ts'
import { placeOf } from './lines.ts'
import type { Stretch } from './mention-parts.ts'
import { type MentionName, mentionNames } from './our-directives.ts'
import { error, type Reading } from './reading.ts'

const nearly = /(?<![\w\\:]):{1,2}([A-Za-z]{2,12})\[([A-Za-z][^\]\s[]{0,100})\]/g
const mostSlips = { value: 2, see: 1, cite: 1 } as const

/**
 * Reports text that is nearly a reference, `:values[roof.M]` or `::value[roof.M]`, where its bracket holds a name of this
 * notebook: without one, it is somebody else's text and no slip.
 */
export function checkNearMention(
  { start, end }: Stretch,
  known: { names: ReadonlySet<string>; reading: Reading },
): void {
  const { names, reading } = known
  for (const match of reading.lines.text.slice(start, end).matchAll(nearly)) {
    const [whole, word = '', label = ''] = match
    const meant = meantBy(word)
    if (meant === undefined || !names.has(label.split('.')[0] ?? '')) continue
    const place = placeOf(reading.lines, start + match.index, start + match.index + whole.length)
    const help = `Write \`:${meant}[${label}]\``
    error(reading, 'mention-form', { place, says: `\`${whole}\` is not read as a reference`, help })
  }
}

const meantBy = (word: string): MentionName | undefined =>
  mentionNames.find(name => slips(word.toLowerCase(), name) <= mostSlips[name])
