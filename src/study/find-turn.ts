import type { PlannedCheck } from '../evaluation/plan-types.ts'
import { findRoot } from '../modules/numerics/find-root.ts'
import { NumericRefusal } from '../modules/numerics/numeric-refusal.ts'
import type { CheckState, Verdict } from './watch.ts'

/** What one run at `x` showed of the watched checks, each in its place. */
export interface Look {
  readonly x: number
  readonly states: readonly CheckState[]
  /** Demand less capacity; NaN where a check is not one comparison. */
  readonly excess: readonly number[]
  readonly lost: boolean
}

/** Where a search ended: a check turned, a value was lost just `beyond`, or nothing happened up to the last place looked at. */
export type TurnEnd =
  | { readonly kind: 'turn'; readonly at: number; readonly checks: readonly { index: number; state: Verdict }[] }
  | { readonly kind: 'lost'; readonly at: number; readonly beyond: number }
  | { readonly kind: 'none'; readonly at: number }

/** What is searched: the checks, and what a run shows. */
export interface Searched {
  readonly checks: readonly PlannedCheck[]
  readonly look: (x: number) => Look
}

/**
 * The first of the places, going along them, between which a check turns or a value is lost, found to 1e-12 of the step between two places.
 * Between places it sees what shows at one of them, and a demand that comes near its capacity and goes away again. A check that turns
 * and turns back within one step without either is not seen.
 */
export function findTurn(searched: Searched, places: readonly number[]): TurnEnd {
  const start = searched.look(places[0] ?? Number.NaN)
  const search: Search = { ...searched, start }
  let before: Look | undefined
  let last = start
  for (const x of places.slice(1)) {
    const next = search.look(x)
    const dipped = before && !next.lost ? dip(search, [before, last, next]) : undefined
    if (before && dipped) return firstIn(search, before, dipped)
    if (isTurned(search, next)) return firstIn(search, last, next)
    before = last
    last = next
  }
  return { kind: 'none', at: last.x }
}

interface Search extends Searched {
  readonly start: Look
}

/** The checks that have turned: one that was not satisfied is so no more, or one is that was not. */
function turnedIn({ start }: Search, look: Look): readonly { index: number; state: Verdict }[] {
  return look.states.flatMap((state, index) => {
    const was = start.states[index] === 'not satisfied'
    return state !== 'lost' && was !== (state === 'not satisfied') ? [{ index, state }] : []
  })
}

const isTurned = (search: Search, look: Look): boolean => look.lost || turnedIn(search, look).length > 0

const inner = 8

/** The turn nearest to `a` between `a`, where nothing has turned, and `b`, where something has: found, then looked for again before it. */
function firstIn(search: Search, a: Look, b: Look, depth = 0): TurnEnd {
  const end = b.lost ? firstLost(search, a, b) : firstCheck(search, a, b)
  if (depth === 3 || end.at === a.x) return end
  let last = a
  for (let count = 1; count <= inner; count += 1) {
    const next = search.look(a.x + ((end.at - a.x) * count) / (inner + 1))
    if (isTurned(search, next)) return firstIn(search, last, next, depth + 1)
    last = next
  }
  return end
}

function firstLost(search: Search, a: Look, b: Look): TurnEnd {
  const [at, beyond] = bisect(search, { a: a.x, b: b.x }, look => look.lost)
  const edge = search.look(at)
  return isTurned(search, edge) && !edge.lost ? firstCheck(search, a, edge) : { kind: 'lost', at, beyond }
}

function firstCheck(search: Search, a: Look, b: Look): TurnEnd {
  const roots = turnedIn(search, b).map(turned => ({ ...turned, at: rootOf(search, { a, b }, turned.index) }))
  const nearest = Math.min(...roots.map(({ at }) => Math.abs(at - a.x)))
  const same = 1e-9 * Math.abs(b.x - a.x)
  const checks = roots.filter(({ at }) => Math.abs(at - a.x) <= nearest + same)
  return { kind: 'turn', at: a.x + Math.sign(b.x - a.x) * nearest, checks: checks.map(({ at: _, ...check }) => check) }
}

/** Where demand meets capacity; where that cannot be followed, the last place before the verdict turns. */
function rootOf(search: Search, { a, b }: { a: Look; b: Look }, index: number): number {
  const [from, to] = [a.excess[index] ?? Number.NaN, b.excess[index] ?? Number.NaN]
  if (from * to < 0) {
    try {
      return findRoot(x => search.look(x).excess[index] ?? Number.NaN, { from: a.x, to: b.x }).root
    } catch (thrown) {
      if (!(thrown instanceof NumericRefusal)) throw thrown
    }
  }
  return bisect(search, { a: a.x, b: b.x }, look => turnedIn(search, look).some(turned => turned.index === index))[0]
}

/** Both sides of a place where `is` becomes true between `a` and `b`. */
function bisect(search: Search, { a, b }: { a: number; b: number }, is: (look: Look) => boolean): [number, number] {
  let [low, high] = [a, b]
  const enough = 1e-12 * Math.abs(b - a)
  while (Math.abs(high - low) > enough) {
    const middle = low + (high - low) / 2
    if (middle === low || middle === high) break
    if (is(search.look(middle))) high = middle
    else low = middle
  }
  return [low, high]
}

const golden = (Math.sqrt(5) - 1) / 2

/** A turned run between three places, where the room a check has shrinks and grows again by steps greater than what is left of it. */
function dip(search: Search, [a, b, c]: readonly [Look, Look, Look]): Look | undefined {
  for (const index of search.checks.keys()) {
    const room = (look: Look): number => Math.abs(look.excess[index] ?? Number.NaN)
    const [x, y, z] = [room(a), room(b), room(c)]
    if (!(y <= x && y <= z && y < Math.max(x - y, z - y))) continue
    const found = lowest(search, { from: a.x, to: c.x, room })
    if (found) return found
  }
  return undefined
}

/** Goes down by golden section until something turns, or the lowest place is found and nothing has. */
function lowest(search: Search, about: { from: number; to: number; room: (look: Look) => number }): Look | undefined {
  let { from, to } = about
  let left = search.look(to - golden * (to - from))
  let right = search.look(from + golden * (to - from))
  for (let count = 0; count < 30; count += 1) {
    const turned = [left, right].find(look => isTurned(search, look))
    if (turned) return turned
    if (about.room(left) < about.room(right)) {
      to = right.x
      right = left
      left = search.look(to - golden * (to - from))
    } else {
      from = left.x
      left = right
      right = search.look(from + golden * (to - from))
    }
  }
  return undefined
}
