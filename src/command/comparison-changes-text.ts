import type { Change } from '../comparison/change-types.ts'
import type { Comparison } from '../comparison/types.ts'
import { textWidth } from '../diagnostic/text-width.ts'
import { named, wide, wrapped } from './comparison-lines.ts'
import { changeText, plainLine, stepText } from './comparison-words.ts'
import { plural } from './count-of.ts'

/** What changed, in groups. */
export function changesOf({ changes, grouped }: Comparison): string[] {
  if (changes.length === 0) return ['Nothing changed in meaning']
  const groups: readonly (readonly [string, (change: Change) => boolean])[] = [
    ['Assumptions', ({ what }) => what === 'assumption'],
    ['Blocks, inputs and formulas', ({ what }) => !['assumption', 'title', 'notice'].includes(what)],
    ['Title block, holds and cautions', ({ what }) => what === 'title' || what === 'notice'],
  ]
  const lines = groups.flatMap(([title, isOf]) => {
    const some = changes.filter(isOf)
    return some.length === 0 ? [] : [`${title} (${some.length})`, ...some.flatMap(changeLines)]
  })
  if (grouped.length === 0) return lines
  return [
    ...lines,
    ...wrapped([`${plural(grouped.length, 'change')} of formulas and blocks are put in as one, being many`]),
  ]
}

function changeLines(change: Change): string[] {
  const name = changeHead(change)
  const step = stepText(change)
  const said = `${plainLine(changeText(change))}${step ? `   ${step}` : ''}`
  const fields = change.fields.flatMap(({ field, old, now }) => fieldLines(field, plainLine(old), plainLine(now)))
  const isWordsOnly = change.old === change.now && change.fields.length > 0
  return [...(isWordsOnly ? [`  ${name}`] : named(name, said)), ...fields]
}

function changeHead({ what, key }: Change): string {
  if (what === 'check' || what === 'module' || what === 'notice') return what === 'notice' ? key : `${key} (${what})`
  return what === 'title' ? `${key} (title block)` : key
}

/** Both texts in one line where they fit; otherwise one below the other, so that they can be compared. */
function fieldLines(field: string, old: string, now: string): string[] {
  const head = `      ${field}: `
  const one = `${head}${quoted(old)} → ${quoted(now)}`
  if (textWidth(one) <= wide) return [one]
  return [...wrapped([`old: ${quoted(old)}`], head), ...wrapped([`new: ${quoted(now)}`], ' '.repeat(head.length))]
}

const quoted = (text: string): string => (text === '' ? 'nothing' : text)
