import { type Amount, ofOneKind } from './amount.ts'
import { done, type Hand, hand, seen, takes } from './hand.ts'
import { type Mark, marksText, Unreadable } from './mark.ts'
import { readSum } from './reckon.ts'

/** A printed comparison worked out: whether it holds, and its two sides where it is one comparison. */
export interface Judged {
  readonly holds: boolean
  readonly sides?: { readonly demand: Amount; readonly capacity: Amount }
}

const relations = ['<', '>', '≤', '≥', '=', '≠'] as const
type Relation = (typeof relations)[number]

/** Works out a condition: comparisons joined by `and`, `or`, `not` in words or signs. Refuses what it cannot read to the end. */
export function judge(marks: readonly Mark[]): Judged {
  const at = hand(marks)
  const judged = readEither(at)
  if (!done(at)) throw new Unreadable(`\`${marksText(marks.slice(at.at))}\` is left over`)
  return judged
}

function readEither(at: Hand): Judged {
  let judged = readBoth(at)
  while (takesWord(at, 'or', '∨')) {
    const next = readBoth(at)
    judged = { holds: judged.holds || next.holds }
  }
  return judged
}

function readBoth(at: Hand): Judged {
  let judged = readOne(at)
  while (takesWord(at, 'and', '∧')) {
    const next = readOne(at)
    judged = { holds: judged.holds && next.holds }
  }
  return judged
}

function readOne(at: Hand): Judged {
  if (takesWord(at, 'not', '¬')) return { holds: !readOne(at).holds }
  const before = at.at
  if (takes(at, '(')) {
    const inner = attempt(() => readEither(at))
    if (inner && takes(at, ')') && !relationAhead(at)) return inner
    at.at = before
  }
  return readComparison(at)
}

function attempt(read: () => Judged): Judged | undefined {
  try {
    return read()
  } catch (error) {
    if (error instanceof Unreadable) return undefined
    throw error
  }
}

/** `a ≤ b`, or a chain `a < b ≤ c`. */
function readComparison(at: Hand): Judged {
  let left = readSum(at)
  let judged: Judged | undefined
  while (relationAhead(at)) {
    const relation = takes(at, ...relations) as Relation
    const right = readSum(at)
    const holds = compare(left, right, relation)
    judged = judged ? { holds: judged.holds && holds } : { holds, ...sided(left, right, relation) }
    left = right
  }
  if (!judged) throw new Unreadable('a comparison without a sign')
  return judged
}

function sided(left: Amount, right: Amount, relation: Relation): Pick<Judged, 'sides'> {
  if (relation === '<' || relation === '≤') return { sides: { demand: left, capacity: right } }
  return relation === '>' || relation === '≥' ? { sides: { demand: right, capacity: left } } : {}
}

/** Comparisons hold within a relative billionth, as the notebook's own do. */
function compare(a: Amount, b: Amount, relation: Relation): boolean {
  ofOneKind([a, b])
  const near = Math.abs(a.value - b.value) <= 1e-9 * Math.max(Math.abs(a.value), Math.abs(b.value))
  switch (relation) {
    case '<':
      return a.value < b.value && !near
    case '>':
      return a.value > b.value && !near
    case '≤':
      return a.value < b.value || near
    case '≥':
      return a.value > b.value || near
    case '=':
      return near
    case '≠':
      return !near
  }
}

function relationAhead(at: Hand): boolean {
  const mark = seen(at)
  return mark?.kind === 'sign' && relations.includes(mark.text as Relation)
}

function takesWord(at: Hand, ...words: readonly string[]): boolean {
  const mark = seen(at)
  if ((mark?.kind !== 'word' && mark?.kind !== 'sign') || !words.includes(mark.text)) return false
  at.at += 1
  return true
}
