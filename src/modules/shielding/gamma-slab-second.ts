import type { Method } from '../method.ts'
import type { Second, Step } from '../module.ts'
import { integrate } from '../numerics/integrate.ts'
import { NumericRefusal } from '../numerics/numeric-refusal.ts'
import { solve, step, when } from '../words.ts'

/** Fluence of a plane isotropic source on its axis for each emitted photon, summed over rings of the plane. */
export const planeByRings: Method = {
  id: 'plane-by-rings',
  title: 'Rings of the plane added up',
  says: 'Adaptive Gauss-Kronrod quadrature over the angle from the normal: each ring of the plane sends its photons through the stack on the slant, with the build-up of that slant path.',
  takes: { b: 'ratio', C: 'ratio', D: 'ratio', reach: 'ratio' },
  run: ({ b, C, D, reach }) => {
    const [depth, c, d] = [Number(b), Number(C), Number(D)]
    const slant = (angle: number): number => {
      const x = depth / Math.cos(angle)
      return (Math.exp(-x) + c * x * Math.exp(-(1 - d) * x)) * Math.tan(angle)
    }
    try {
      const to = reach === undefined ? Math.PI / 2 : Math.atan(Number(reach))
      const { value, evaluations, error } = integrate(slant, { from: 0, to, relative: 1e-9 })
      const share = error / value
      return { ok: true, values: { f: value / 2 }, verified: `${evaluations} angles; estimated error ${words(share)}` }
    } catch (fault) {
      if (fault instanceof NumericRefusal) return { ok: false, says: fault.message }
      throw fault
    }
  },
}

const words = (share: number): string => (share < 1e-6 ? 'less than 1 part in a million' : share.toExponential(1))

const gives = {
  f: { dimension: 'ratio', name: 'f_rings', says: 'fluence behind the stack, for each emitted photon' },
} as const
const stack = { b: 'b', C: 'C_b', D: 'D_b' }
const says = 'rings of the plane added up'

const rings: readonly Step[] = [
  when(
    { given: 'radius' },
    {
      yes: [solve(planeByRings, { takes: { ...stack, reach: 'u_rim' }, gives, says })],
      no: [solve(planeByRings, { takes: stack, gives, says })],
    },
  ),
  step('T_rings', 'f_rings / f_open', { says: 'share of the open field that is left' }),
]

/** The plane added up ring by ring: the same kernel, no exponential integral. */
export const planeAddedUp: Second = {
  title: 'The plane added up ring by ring',
  says: 'The same kernel and build-up, but rings of the plane are added up numerically: no exponential integral and no closed form. It finds a slip in the closed forms, not in the coefficients.',
  when: {
    condition: { choice: 'source', is: ['plane'] },
    otherwise: 'A point source and a beam have nothing to add up: their formula is the kernel itself.',
  },
  steps: [when({ choice: 'source', is: ['plane'] }, { yes: rings })],
  compare: [{ first: 'f_slab', second: 'f_rings', band: 0.001, says: 'the two are one integral in two forms' }],
}
