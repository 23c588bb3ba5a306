import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { valueWords } from '../formula/kind-words.ts'
import { readFormula } from '../formula/read-formula.ts'
import type { Node } from '../formula/types.ts'
import type { Assumption, Written } from '../notebook/types.ts'
import { isAtMost } from '../quantity/tolerance.ts'
import type { Definition } from './definition.ts'
import { breakKey, type Draft, faultAt, newSlot } from './draft.ts'
import { type Literal, literalOf } from './literal.ts'
import type { Entity, PlannedAssumption, Word } from './plan-types.ts'

type Found = { literal: Literal } | { word: string } | { fault: Diagnostic }

/** Gives one assumption its slot, or keeps its word, and adds its row to the block's register. */
export function planAssumption(draft: Draft, definition: Extract<Definition, { kind: 'assumption' }>): void {
  const { assumption, key, block } = definition
  const found = readValue(assumption.value)
  if ('fault' in found) {
    breakKey(draft, key, found.fault)
    return
  }
  const named = 'word' in found ? wordOf(definition, found.word) : entityOf(draft, definition, found.literal)
  draft.names.set(key, named)
  const row = rowOf(draft, { assumption, named, found })
  const planned = draft.blocks[block]
  draft.blocks[block] = {
    kind: 'assume',
    index: block,
    rows: [...(planned?.kind === 'assume' ? planned.rows : []), row],
  }
}

/** A value that begins like a number must be one; anything else is a short text. */
function readValue(written: Written): Found {
  const read = readFormula(written.text)
  const literal = read.ok && !read.formula.to ? literalOf(read.formula.tree) : undefined
  if (literal) return { literal }
  if (!/^[-+−.\d]/u.test(written.text.trim())) return { word: written.text }
  if (!read.ok) return { fault: faultAt(read.fault, written) }
  return {
    fault: {
      rule: 'value-kind',
      severity: 'error',
      place: written.place,
      ...(isNumber(read.formula.tree) ? tooGreat(written) : noFormula),
    },
  }
}

const isNumber = (tree: Node): boolean =>
  tree.kind === 'negative' ? isNumber(tree.of) : tree.kind === 'number' || tree.kind === 'quantity'

const tooGreat = ({ text }: Written) => ({ says: `\`${text}\` is too great a number` })

const noFormula = {
  says: 'An assumption is a quantity, a number or a short text, not a formula',
  help: 'Put the formula in a `work` block and refer to the assumption from there',
}

const wordOf = (definition: Extract<Definition, { kind: 'assumption' }>, text: string): Word => ({
  kind: 'word',
  key: definition.key,
  name: definition.assumption.name.text,
  block: definition.block,
  text,
  place: definition.place,
})

function entityOf(draft: Draft, definition: Extract<Definition, { kind: 'assumption' }>, literal: Literal): Entity {
  const { assumption, key, block, place } = definition
  const name = assumption.name.text
  return {
    kind: 'number',
    key,
    name,
    block,
    origin: 'assumption',
    slot: newSlot(draft, literal.si),
    dimension: literal.dimension,
    point: literal.point,
    unit: literal.unit,
    symbol: assumption.symbol?.text ?? name,
    says: name.replaceAll('_', ' '),
    place,
    typed: { digits: literal.digits, unit: literal.unit },
  }
}

type About = {
  readonly assumption: Assumption
  readonly named: Entity | Word
  readonly found: Exclude<Found, { fault: Diagnostic }>
}

function rowOf(draft: Draft, about: About): PlannedAssumption {
  const { assumption, named, found } = about
  if (!assumption.basis) warnNoBasis(draft, assumption)
  if ('word' in found) {
    if (assumption.range) draft.diagnostics.push(notComparable(assumption.range.from, 'A short text has no range'))
    return { assumption, named, ...(assumption.measured ? { measured: assumption.measured.text } : {}) }
  }
  const like = (written: Written) => readLike(draft, written, found.literal)
  const from = assumption.range && like(assumption.range.from)
  const to = assumption.range && like(assumption.range.to)
  const measured = assumption.measured && like(assumption.measured)
  if (from && to) judgeRange(draft, assumption, { value: found.literal.si, from: from.si, to: to.si })
  return { assumption, named, ...(from && to ? { range: { from, to } } : {}), ...(measured ? { measured } : {}) }
}

/** A literal that must have the dimension of the assumption's value. */
function readLike(draft: Draft, written: Written, like: Literal): Literal | undefined {
  const read = readValue(written)
  if ('fault' in read) draft.diagnostics.push(read.fault)
  else if ('word' in read)
    draft.diagnostics.push(notComparable(written, `Expected ${valueWords(like, draft.system)} here, got a text`))
  else if (read.literal.dimension !== like.dimension || read.literal.point !== like.point) {
    const says = `Expected ${valueWords(like, draft.system)} here, got ${valueWords(read.literal, draft.system)}`
    draft.diagnostics.push({ ...notComparable(written, says), rule: 'dimension-mismatch' })
  } else return read.literal
  return undefined
}

const notComparable = (written: Written, says: string): Diagnostic => ({
  rule: 'value-kind',
  severity: 'error',
  place: written.place,
  says,
})

function warnNoBasis(draft: Draft, assumption: Assumption): void {
  draft.diagnostics.push({
    rule: 'assumption-basis',
    severity: 'warning',
    place: assumption.name.place,
    says: `\`${assumption.name.text}\` has no basis`,
    help: 'Write `{ value: …, basis: … }`: where the value comes from',
  })
}

function judgeRange(draft: Draft, assumption: Assumption, about: { value: number; from: number; to: number }): void {
  const { value, from, to } = about
  const range = assumption.range
  if (!range) return
  const text = `${range.from.text} to ${range.to.text}`
  if (from > to) {
    const says = `The range of \`${assumption.name.text}\` runs backwards: ${text}`
    draft.diagnostics.push({
      rule: 'assumption-range',
      severity: 'error',
      place: range.from.place,
      says,
      help: 'Write the smaller value first',
    })
  } else if (!isAtMost(from, value) || !isAtMost(value, to)) {
    const says = `\`${assumption.name.text}\` is ${assumption.value.text}, outside its own plausible range ${text}`
    draft.diagnostics.push({ rule: 'assumption-range', severity: 'warning', place: assumption.value.place, says })
  }
}
