import type { Place } from '../diagnostic/diagnostic.ts'
import { namePattern } from '../formula/names.ts'
import { type MentionParts, mentionParts, type Stretch } from './mention-parts.ts'
import { isBlockName } from './name-forms.ts'
import { isMentionName, type MentionName } from './our-directives.ts'
import { readAttributes } from './read-attributes.ts'
import { error, type Reading } from './reading.ts'
import { isReferenceKey } from './reference-key.ts'
import type { Mention, Written } from './types.ts'

const figureLimits = { from: 1, to: 10 } as const
const valueName = new RegExp(`^[a-z][a-z0-9_]*\\.${namePattern}$`, 'u')

interface Form {
  readonly fits: (name: string) => boolean
  readonly shape: string
  readonly attributes: readonly string[]
}

const forms: Readonly<Record<MentionName, Form>> = {
  value: {
    fits: name => valueName.test(name),
    shape: '`:value[roof.M_support]`: a block and a name in it',
    attributes: ['unit', 'figures'],
  },
  see: { fits: isBlockName, shape: '`:see[roof]`: the name of a block', attributes: [] },
  cite: { fits: isReferenceKey, shape: '`:cite[site-report-14]`: the key of a reference', attributes: [] },
}

/** Returns a reference from the author's own characters; nothing, with a report, where it is not of the form. */
export function readMention(stretch: Stretch, reading: Reading): Mention | undefined {
  const parts = mentionParts(stretch, reading.lines)
  const { kind, whole, label, braces } = parts
  if (!isMentionName(kind)) return undefined
  const form = forms[kind]
  const wrong = formFault(parts, form)
  if (wrong !== undefined || label === undefined) {
    if (wrong !== undefined) error(reading, 'mention-form', { place: (label?.text ? label : whole).place, ...wrong })
    return undefined
  }
  const attributes = readAttributes(braces, { known: form.attributes, reading })
  if (attributes === undefined) return undefined
  if (kind !== 'value') return { kind, name: label, place: whole.place }
  return readValue({ name: label, place: whole.place, attributes }, reading)
}

/** What is wrong with the form, if anything. Brackets that are absent altogether are nobody's fault: `ratio:value`. */
function formFault({ kind, label, braces, next }: MentionParts, { fits, shape }: Form) {
  const help = `Write ${shape}`
  if (label === undefined && next === '[') return { says: `The bracket after \`:${kind}\` is not closed`, help }
  if (label === undefined) return braces === undefined ? undefined : { says: `\`:${kind}\` names nothing`, help }
  if (next === '{' && braces === undefined) {
    return { says: 'What stands in braces cannot be read', help: 'Write for instance `{unit="kip*ft/ft" figures=3}`' }
  }
  if (fits(label.text)) return undefined
  if (label.text === '') return { says: `\`:${kind}[]\` names nothing`, help }
  if (kind === 'value' && isBlockName(label.text)) {
    return {
      says: `\`${label.text}\` names no value: a block and a name are needed`,
      help: `Write \`:value[${label.text}.NAME]\`, or \`:see[${label.text}]\` for a block`,
    }
  }
  return { says: `\`${label.text}\` cannot be what \`:${kind}\` names`, help }
}

interface ValueParts {
  readonly name: Written
  readonly place: Place
  readonly attributes: ReadonlyMap<string, Written>
}

function readValue({ name, place, attributes }: ValueParts, reading: Reading): Mention | undefined {
  const unit = attributes.get('unit')
  const figures = attributes.get('figures')
  const number = figures === undefined ? undefined : /^\d{1,3}$/.test(figures.text) ? Number(figures.text) : Number.NaN
  if (figures !== undefined && !(number !== undefined && number >= figureLimits.from && number <= figureLimits.to)) {
    const says = `\`figures\` is a whole number from ${figureLimits.from} to ${figureLimits.to}`
    error(reading, 'mention-form', { place: figures.place, says })
    return undefined
  }
  return {
    kind: 'value',
    name,
    place,
    ...(unit !== undefined && { unit }),
    ...(number !== undefined && { figures: number }),
  }
}
