import { quotient, raised } from './guarded.ts'
import type { Part } from './part.ts'
import { closureOf } from './part-closure.ts'
import type { Compiled } from './types.ts'

/** A part to a power known now; the usual ones by multiplication and roots. */
export function powerClosure(of: Part, by: number): Part {
  if (by === 1) return of
  if (by === 2 && of.kind === 'slot') return { kind: 'shape', name: 'q', leaves: { numbers: [of.at], inner: [] } }
  return { kind: 'closure', run: power(closureOf(of), by) }
}

function power(x: Compiled, by: number): Compiled {
  switch (by) {
    case 2:
      return s => square(x(s))
    case 3:
      return s => cube(x(s))
    case 4:
      return s => square(square(x(s)))
    case 0.5:
      return s => Math.sqrt(x(s))
    case -1:
      return s => quotient(1, x(s))
    default:
      return s => raised(x(s), by)
  }
}

const square = (x: number): number => x * x
const cube = (x: number): number => x * x * x
