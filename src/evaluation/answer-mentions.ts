import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { nearestName } from '../diagnostic/nearest-name.ts'
import { valueWords } from '../formula/kind-words.ts'
import { unknownUnitHelp } from '../formula/names.ts'
import type { Mention, Written } from '../notebook/types.ts'
import type { System, Unit } from '../quantity/types.ts'
import { readUnit } from '../quantity/unit.ts'
import { blockAnchor } from './anchors.ts'
import type { Entity, Points, Rows } from './plan-types.ts'
import { type PrintContext, printedOf, shownOf, siOf } from './print-context.ts'
import type { Answer } from './workings.ts'

/** What the mentions of the author's text come to, and which mention something that does not exist. */
export function answerMentions(
  context: PrintContext,
  known: { titles: ReadonlyMap<string, string>; references: ReadonlySet<string> },
) {
  const diagnostics: Diagnostic[] = []
  const answers = context.results.plan.notebook.mentions.map((mention): Answer => {
    const answer = answerOf(context, mention, known)
    if (!('fault' in answer)) return answer
    if (answer.fault) diagnostics.push(answer.fault)
    return { kind: 'unknown' }
  })
  return { answers, diagnostics }
}

type Known = { readonly titles: ReadonlyMap<string, string>; readonly references: ReadonlySet<string> }
type Fault = { readonly fault: Diagnostic | undefined }

function answerOf(context: PrintContext, mention: Mention, known: Known): Answer | Fault {
  if (mention.kind === 'value') return answerValue(context, mention)
  const { name } = mention
  if (mention.kind === 'cite')
    return known.references.has(name.text)
      ? { kind: 'cite', key: name.text }
      : unknown(mention, 'source', known.references)
  return answerSee(context, mention, known.titles)
}

/** A block that stands in the package; one that an error keeps out of it has its message already. */
function answerSee(context: PrintContext, mention: Mention, titles: Known['titles']): Answer | Fault {
  const { name } = mention
  const { notebook, broken } = context.results.plan
  const names = notebook.blocks.map(block => block.name.text)
  const index = names.indexOf(name.text)
  const title = titles.get(name.text)
  if (title === undefined)
    return index >= 0 || broken.has(name.text) ? { fault: undefined } : unknown(mention, 'block', names)
  return { kind: 'see', number: context.numbering.blocks[index] ?? '', title, to: blockAnchor(name.text) }
}

function unknown(mention: Mention, kind: string, candidates: Iterable<string>): Fault {
  const { text } = mention.name
  const nearest = nearestName(text, candidates)
  return mentionFault(mention, `No ${kind} is called \`${text}\``, nearest && `Did you mean \`${nearest}\`?`)
}

function answerValue(context: PrintContext, mention: Extract<Mention, { kind: 'value' }>): Answer | Fault {
  const { plan } = context.results
  const { name } = mention
  const named = plan.names.get(name.text)
  if (!named) {
    const broken = plan.broken.has(name.text) || plan.broken.has(name.text.split('.')[0] ?? '')
    return broken ? { fault: undefined } : unknown(mention, 'value', plan.names.keys())
  }
  if (named.kind === 'points' || named.kind === 'rows') return severalValues(mention, named)
  if (named.kind === 'word')
    return { kind: 'word', text: named.text, to: context.numbering.assumptions.get(named.key)?.id ?? '' }
  if (!Number.isFinite(siOf(context, named))) return absentValue(context, mention, named)
  const unit = mention.unit ? unitFor(mention.unit, named, plan.system) : undefined
  if (unit && 'fault' in unit) return unit
  const shown = shownOf(context, named, {
    ...(unit ? { unit } : {}),
    ...(mention.figures ? { figures: mention.figures } : {}),
  })
  return { kind: 'value', printed: printedOf(context, named, shown) }
}

const mentionFault = ({ name }: Mention, says: string, help?: string): Fault => ({
  fault: { rule: 'mention-unknown', severity: 'error', place: name.place, says, ...(help ? { help } : {}) },
})

function severalValues(mention: Mention, named: Points | Rows): Fault {
  const says = `\`${named.key}\` is ${named.kind === 'rows' ? 'a list' : 'a table'}, and one value is wanted here`
  return mentionFault(mention, says, named.kind === 'rows' ? `Name one row of it, as in \`${named.key}_1\`` : undefined)
}

/** Why there is no number has been said, save where its branch was not taken. */
function absentValue(context: PrintContext, mention: Mention, entity: Entity): Fault {
  for (let at: Entity | undefined = entity; at; at = at.same)
    if (context.results.absent.get(at) === 'not taken')
      return mentionFault(mention, `\`${entity.key}\` was not evaluated: its branch was not taken`)
  return { fault: undefined }
}

function unitFor(written: Written, entity: Entity, system: System): Unit | Fault {
  const read = readUnit(written.text)
  const fault = (rule: Diagnostic['rule'], says: string, help?: string): Fault => ({
    fault: { rule, severity: 'error', place: written.place, says, ...(help ? { help } : {}) },
  })
  if (!read.ok) return fault('unit-unknown', read.fault.says, unknownUnitHelp(read.fault))
  if (read.unit.dimension === entity.dimension) return read.unit
  return fault(
    'dimension-mismatch',
    `\`${entity.key}\` is ${valueWords(entity, system)}; it cannot be shown in \`${written.text}\``,
  )
}
