import { findRoot } from '../modules/numerics/find-root.ts'
import { NumericRefusal } from '../modules/numerics/numeric-refusal.ts'
import { findDip } from './find-dip.ts'
import { isTurned, type Look, type Search, type Searched, turnedIn, turnedTo } from './look.ts'
import type { Verdict } from './watch.ts'

/** Where a search ended: a check turned, a value was lost just `beyond`, or nothing happened up to the last place looked at. */
export type TurnEnd =
  | { readonly kind: 'turn'; readonly at: number; readonly checks: readonly { index: number; state: Verdict }[] }
  | { readonly kind: 'lost'; readonly at: number; readonly beyond: number }
  | { readonly kind: 'none'; readonly at: number }

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
    const dipped = before && !next.lost ? findDip(search, [before, last, next]) : undefined
    if (before && dipped) return firstIn(search, before, dipped)
    if (isTurned(search, next)) return firstIn(search, last, next)
    before = last
    last = next
  }
  return { kind: 'none', at: last.x }
}

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

/** Only the first of what is lost at `b` is followed; where something else is lost before it, that is followed next. */
function firstLost(search: Search, a: Look, b: Look): TurnEnd {
  const [at, beyond] = bisect(a.x, b.x, search.followLost(b.x))
  const edge = search.look(at)
  if (edge.lost && at !== a.x) return firstLost(search, a, edge)
  return isTurned(search, edge) ? firstCheck(search, a, edge) : { kind: 'lost', at, beyond }
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
  const check = search.followCheck(index)
  if (from * to < 0) {
    try {
      return findRoot(x => check(x).excess, { from: a.x, to: b.x }).root
    } catch (thrown) {
      if (!(thrown instanceof NumericRefusal)) throw thrown
    }
  }
  return bisect(a.x, b.x, x => turnedTo(search, index, check(x).state) !== undefined)[0]
}

/** Both sides of a place where `is` becomes true between `a` and `b`. */
function bisect(a: number, b: number, is: (x: number) => boolean): [number, number] {
  let [low, high] = [a, b]
  const enough = 1e-12 * Math.abs(b - a)
  while (Math.abs(high - low) > enough) {
    const middle = low + (high - low) / 2
    if (middle === low || middle === high) break
    if (is(middle)) high = middle
    else low = middle
  }
  return [low, high]
}
