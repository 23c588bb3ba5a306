import type { Attribution, CheckMove, Comparison, ResultMove } from '../comparison/types.ts'
import { digitsOf, lastPlace } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import type { Unit } from '../quantity/types.ts'
import { changeName, signed } from './comparison-words.ts'

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

/** The name of a change, by its id. */
export type Names = (id: string) => string

/** Names of the changes of a comparison. */
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

/** The ends of a ratio, shown to three places. */
export const ratioEnds = ({ old, now }: CheckMove): Ends => ({
  old: old?.ratio?.value ?? 0,
  now: now?.ratio?.value ?? 0,
  place: ratioPlace,
  scale: difference => difference,
})

/** The ends of a result, in the unit and to the place that it is printed to. */
export function resultEnds({ old, now, si }: ResultMove): Ends {
  const unit: Unit | undefined = (now ?? old)?.unit
  const same = old?.unit.text === now?.unit.text
  const place = Math.min(...[same ? old : undefined, now].flatMap(shown => (shown ? [lastPlace(shown.digits)] : [])))
  const value = (of: number | undefined): number => (unit && of !== undefined ? inUnit(of, unit) : 0)
  return { old: value(si.old), now: value(si.now), place, scale: difference => difference / (unit?.factor ?? 1) }
}
