import type { Comment, Tick } from './record.ts'
import { indexOf, type NamedStep, type StepIndex } from './step-name.ts'
import { changedSince } from './step-print.ts'
import type { Vouched } from './vouched.ts'

/** A tick that fell, with what is printed otherwise under it. */
export interface Fallen {
  readonly tick: Tick
  readonly changed: readonly Vouched[]
}

/** Where the entries of one block belong. */
export interface Matched {
  readonly standing: ReadonlyMap<NamedStep, readonly Tick[]>
  readonly fallen: ReadonlyMap<NamedStep, readonly Fallen[]>
  readonly comments: ReadonlyMap<NamedStep, readonly Comment[]>
  readonly gone: readonly (Tick | Comment)[]
}

/**
 * Finds the step of every entry. A tick stands at the step it names where that is printed as it was; or else, in a list, at the first other
 * row that is printed so and has no tick of the same checker yet: rows change their places. It falls where it is printed so nowhere.
 */
export function matchEntries(
  { ticks, comments }: { readonly ticks: readonly Tick[]; readonly comments: readonly Comment[] },
  steps: readonly NamedStep[],
): Matched {
  const index = indexOf(steps)
  const standing = new Map<NamedStep, Tick[]>()
  const fallen = new Map<NamedStep, Fallen[]>()
  const commented = new Map<NamedStep, Comment[]>()
  const gone: (Tick | Comment)[] = []
  const left = ticks.filter(tick => {
    const own = index.named(tick).find(step => isAsTicked(tick, step))
    if (own) add(standing, own, tick)
    return !own
  })
  for (const tick of left) {
    const isFree = (step: NamedStep): boolean => !standing.get(step)?.some(({ by }) => by === tick.by)
    const moved = index.inRows(tick).find(step => isAsTicked(tick, step) && isFree(step))
    const place = moved ?? placeOf(tick, index)
    if (moved) add(standing, moved, tick)
    else if (place) add(fallen, place, { tick, changed: changedSince(tick.of, place.print) })
    else gone.push(tick)
  }
  for (const comment of comments) {
    const place = placeOf(comment, index)
    if (place) add(commented, place, comment)
    else gone.push(comment)
  }
  return { standing, fallen, comments: commented, gone }
}

const isAsTicked = ({ of }: Tick, { print }: NamedStep): boolean => changedSince(of, print).length === 0

/** The step an entry names; where its row has words, a row with the same. */
const placeOf = (entry: Tick | Comment, { named, inRows }: StepIndex): NamedStep | undefined =>
  named(entry)[0] ?? (entry.row === undefined ? undefined : inRows(entry)[0])

function add<Value>(map: Map<NamedStep, Value[]>, step: NamedStep, value: Value): void {
  const own = map.get(step)
  if (own) own.push(value)
  else map.set(step, [value])
}
