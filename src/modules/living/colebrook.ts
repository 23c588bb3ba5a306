import type { Method } from '../method.ts'
import { findRoot } from '../numerics/find-root.ts'
import { NumericRefusal } from '../numerics/numeric-refusal.ts'

/** What the formula of Colebrook leaves of `x`, one over the root of the friction factor, at a Reynolds number and relative roughness. */
const left = (x: number, { Re, rough }: { readonly Re: number; readonly rough: number }): number =>
  x + 2 * Math.log10(rough / 3.7 + (2.51 * x) / Re)

/**
 * Friction factor of Darcy and Weisbach in turbulent flow by the formula of Colebrook (1939), solved for the root.
 * Refuses a Reynolds number below 2300 and a relative roughness outside 0 to 0.05, where the formula has no meaning.
 */
export const colebrook: Method = {
  id: 'colebrook',
  title: 'Friction factor of Colebrook',
  says: 'Brent root search for one over the root of the friction factor; the formula rises with it, so that there is one root.',
  takes: { Re: 'ratio', roughness: 'length', bore: 'length' },
  run: numbers => {
    const Re = Number(numbers.Re)
    const rough = Number(numbers.roughness) / Number(numbers.bore)
    if (!(Re >= 2300)) return { ok: false, says: 'the flow is laminar' }
    if (!(rough >= 0 && rough <= 0.05)) return { ok: false, says: 'the relative roughness is outside 0 to 0.05' }
    try {
      const { root, residual } = findRoot(x => left(x, { Re, rough }), { from: 1, to: 100 })
      const size = Math.max(Math.abs(residual), 1e-15).toExponential(0)
      return { ok: true, values: { f: root ** -2 }, verified: `put into the formula it leaves at most ${size}` }
    } catch (fault) {
      if (fault instanceof NumericRefusal) return { ok: false, says: fault.message }
      throw fault
    }
  },
}
