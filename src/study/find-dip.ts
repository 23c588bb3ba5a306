import { isTurned, type Look, type Search } from './look.ts'

const golden = (Math.sqrt(5) - 1) / 2

/** A turned run between three places, where the room a check has shrinks and grows again by steps greater than what is left of it. */
export function findDip(search: Search, [a, b, c]: readonly [Look, Look, Look]): Look | undefined {
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
