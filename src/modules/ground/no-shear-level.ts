import type { Method } from '../method.ts'
import { findRoot } from '../numerics/find-root.ts'
import { loadDown } from './envelope-ordinates.ts'

/** Where the shear in a span under the envelope is nil: the load down to there is what the reactions above bear. */
export const noShearLevel: Method = {
  id: 'no-shear-level',
  title: 'Place of no shear',
  says: 'The load down the envelope is compared with the reactions above by bisection and interpolation; without a change of sign the end of the span with the smaller shear is taken.',
  takes: {
    full: 'pressure',
    depth: 'length',
    upper: 'length',
    lower: 'length',
    borne: 'force_per_length',
    reaction: 'force_per_length',
  },
  run: (numbers, { ground }) => {
    const one = (name: string): number => Number(numbers[name] ?? Number.NaN)
    const [upper, lower] = [one('upper'), one('lower')]
    const shear = (z: number): number =>
      one('borne') + one('reaction') - loadDown(ground ?? '', { full: one('full'), depth: one('depth') }, z)
    if (!(lower > upper)) return { ok: false, says: 'the strut does not stand below the one above' }
    const [top, foot] = [shear(upper), shear(lower)]
    const level =
      top <= 0 ? upper : foot >= 0 ? lower : findRoot(shear, { from: upper, to: lower, tolerance: 1e-9 }).root
    return { ok: true, values: { level }, verified: 'the place is put into the moment of the next line' }
  },
}
