import type {
  Attribution,
  Change,
  CheckMove,
  Comparison,
  LineMove,
  ResultMove,
  VerdictMove,
} from '../comparison/types.ts'
import { printable } from '../diagnostic/printable.ts'
import { digitsOf, lastPlace, plainNumber } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import type { Shown, Unit } from '../quantity/types.ts'
import { unitText } from '../quantity/unit.ts'
import { plural } from './count-of.ts'

/** What the two sides are called. */
export interface ComparedAbout {
  readonly title: string
  readonly old: { readonly label: string; readonly revision: string }
  readonly now: { readonly label: string; readonly revision: string }
  /** Other editions of the tool and its modules than an old package was issued with, in sentences. */
  readonly editions: readonly string[]
}

export const valueText = ({ digits, unit }: Shown): string => `${plainNumber(digits)} ${unitText(unit)}`.trim()

/** With its sign, plus too. */
const signed = (digits: string): string => `${digits.startsWith('-') ? '' : '+'}${plainNumber(digits)}`

/** A relative move: `+4.2 %`; a factor where it is more than tenfold. */
export function shareText(share: number): string {
  if (!Number.isFinite(share)) return 'from 0'
  if (share >= 9) return `×${plainNumber(digitsOf(share + 1, 3))}`
  const digits = digitsOf(share * 100, 2)
  return `${signed(Math.abs(share) < 0.1 ? digits : (share * 100).toFixed(0))} %`
}

/** How far a typed number moved: `−0.5 m, −19 %`. */
export function stepText({ step }: Change): string {
  if (!step) return ''
  const { digits, unit } = step.amount
  const amount = `${signed(digits)} ${unit.offset === undefined ? unitText(unit) : unit.text === 'degF' ? '°F' : 'K'}`
  return [amount.trim(), ...(step.share === undefined ? [] : [shareText(step.share)])].join(', ')
}

/** What a change is called where something is said to move by it. */
export function changeName({ what, key, action }: Change): string {
  if (what === 'check') return `check of ${key}`
  if (what === 'module') return `module of ${key}`
  return what === 'block' ? `block ${key} ${action}` : key
}

/** One change in a line, without its name: `2.6 m → 2.1 m`, `added: 3 m`. */
export function changeText({ action, old, now, what }: Change): string {
  if (action === 'renamed') return `renamed from ${old}`
  if (what === 'block') return `${action}: ${now ?? old}`
  if (action === 'added') return `added: ${now}`
  if (action === 'removed') return `removed: ${old}`
  return old === now ? `${now ?? ''}` : `${old ?? ''} → ${now ?? ''}`
}

/** Rounds to a place, as text with its sign: parts that are shown add up to the whole that is shown. */
interface Places {
  readonly place: number
  /** A number in whole places. */
  readonly of: (value: number) => number
}

const placesOf = (place: number): Places => ({ place, of: value => Math.round(value / place) })

function placed(count: number, { place }: Places): string {
  const decimals = Math.max(0, -Math.floor(Math.log10(place) + 1e-9))
  if (decimals > 6) return signed(digitsOf(count * place, 3))
  return signed((count * place).toFixed(decimals))
}

/** The parts of a move and who made them; the name alone where one change made it all. */
export function movedBy(moved: Attribution | undefined, about: { names: Names; ends: Ends }): string[] {
  if (!moved) return []
  const { names, ends } = about
  const nameOf = (ids: readonly string[]): string => ids.map(names).join(' with ')
  const [only] = moved.parts
  if (moved.parts.length === 1 && only && Math.abs(moved.together) < ends.place / 2) return [nameOf(only.changes)]
  const places = placesOf(ends.place)
  const parts = moved.parts.map(({ changes, alone }) => ({
    name: nameOf(changes),
    count: places.of(ends.scale(alone)),
  }))
  const rest = places.of(ends.now) - places.of(ends.old) - parts.reduce((sum, { count }) => sum + count, 0)
  const isRounding = Math.abs(ends.scale(moved.together)) < ends.place
  return [
    ...parts.filter(({ count }) => count !== 0).map(({ name, count }) => `${name} ${placed(count, places)}`),
    ...(rest === 0 ? [] : [`${isRounding ? 'rounding' : 'together'} ${placed(rest, places)}`]),
  ]
}

export type Names = (id: string) => string

export const namesOf = ({ changes }: Comparison): Names => {
  const names = new Map(changes.map(change => [change.id, changeName(change)]))
  return id => names.get(id) ?? id
}

/** The two ends of a move as shown, and the place they are shown to. */
export interface Ends {
  readonly old: number
  readonly now: number
  readonly place: number
  /** A difference as stored, in what the ends are shown in. */
  readonly scale: (difference: number) => number
}

const ratioPlace = 0.001

export const ratioEnds = ({ old, now }: CheckMove): Ends => ({
  old: old?.ratio?.value ?? 0,
  now: now?.ratio?.value ?? 0,
  place: ratioPlace,
  scale: difference => difference,
})

export function resultEnds({ old, now, si }: ResultMove): Ends {
  const unit: Unit | undefined = (now ?? old)?.unit
  const same = old?.unit.text === now?.unit.text
  const place = Math.min(...[same ? old : undefined, now].flatMap(shown => (shown ? [lastPlace(shown.digits)] : [])))
  const value = (of: number | undefined): number => (unit && of !== undefined ? inUnit(of, unit) : 0)
  return { old: value(si.old), now: value(si.now), place, scale: difference => difference / (unit?.factor ?? 1) }
}

/** `0.767 → 0.940`; a side that is not there or has no ratio is a dash. */
export function ratioText({ old, now }: CheckMove): readonly [string, string] {
  const of = (state: CheckMove['old']): string => (state?.ratio ? plainNumber(state.ratio.digits) : '–')
  return [of(old), of(now)]
}

export function verdictText({ what, block, says, now }: VerdictMove): string {
  const bad = now === false
  if (what === 'limit') return `${block}: the limit that ${says} is ${bad ? 'exceeded now' : 'kept now'}`
  if (what === 'range') return `${block} is ${bad ? 'outside' : 'inside'} its plausible range now`
  return `${block}: the second method ${bad ? 'no longer agrees' : 'agrees now'} (${says})`
}

/** A check that is satisfied as before and in doubt now, or in doubt no more. */
export function doubtTurn(old: CheckMove['old'], now: CheckMove['now']): string {
  if (!old?.satisfied || !now?.satisfied || old.doubts.join() === now.doubts.join()) return ''
  return now.doubts.length > 0 ? `IN DOUBT: ${now.doubts.join(' and ')}` : 'in doubt no more'
}

/** How the checks of the new notebook stand, those that turned among them. */
export function standingOf(checks: readonly CheckMove[]): string {
  const reached = checks.flatMap(({ now }) => now ?? [])
  const failing = reached.filter(({ satisfied }) => !satisfied).length
  const doubtful = reached.filter(({ doubts }) => doubts.length > 0)
  const why = [...new Set(doubtful.flatMap(({ doubts }) => doubts))].join(', ')
  if (reached.length === 0) return 'no check was reached in the new notebook'
  if (failing === 0)
    return `every check that was reached is satisfied (${reached.length})${doubtful.length > 0 ? `, ${doubtful.length} of them in doubt: ${why}` : ''}`
  return `${failing} of ${plural(reached.length, 'check')} not satisfied in the new notebook${doubtful.length > 0 ? `, ${doubtful.length} satisfied but in doubt: ${why}` : ''}`
}

/** Numbers of lines, those that follow one another as a range: `4.02–4.05, 4.09a`. */
export function ranges(numbers: readonly string[]): string {
  const runs: string[][] = []
  for (const number of numbers) {
    const run = runs.at(-1)
    if (run && follows(run.at(-1) ?? '', number)) run.push(number)
    else runs.push([number])
  }
  return runs.map(run => (run.length > 2 ? `${run[0]}–${run.at(-1)}` : run.join(', '))).join(', ')
}

function follows(before: string, number: string): boolean {
  const [a, b] = [before, number].map(text => /^(\d+)\.(\d+)([a-z]*)$/.exec(text))
  if (!a || !b || a[1] !== b[1]) return false
  const step = Number(b[2]) - Number(a[2])
  return step === 1 || (step === 0 && b[3] !== '' && a[3] !== b[3])
}

/** How many lines of each block, in the order of the package. */
export function byBlock(lines: readonly LineMove[]): ReadonlyMap<string, readonly LineMove[]> {
  const blocks = new Map<string, LineMove[]>()
  for (const line of lines) blocks.set(line.block, [...(blocks.get(line.block) ?? []), line])
  return blocks
}

/** What is written otherwise and means the same, in phrases; none where there is nothing. */
export function restatedText({ restated: { written, order, layout, paragraphs } }: Comparison): string[] {
  const { added, removed } = paragraphs
  return [
    ...(written.length > 0 ? [`the same in another unit or form: ${written.join(', ')}`] : []),
    ...(order ? ['blocks or their lines in another order'] : []),
    ...(layout.length > 0 ? [`comments or layout of ${layout.join(', ')}`] : []),
    ...(added + removed > 0 ? [`text between the blocks: ${added} paragraphs in, ${removed} out`] : []),
  ]
}

/** Text that came out of a notebook, in one line that cannot steer a terminal. */
export const plainLine = (text: string): string => printable(text.replaceAll(/\s+/g, ' ').trim())
