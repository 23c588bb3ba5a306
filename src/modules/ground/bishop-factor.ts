import type { Method } from '../method.ts'
import { bishopRoot } from './bishop-root.ts'

/** The factor that stands on both sides of Bishop's equation, from the slices as printed. */
export const bishopFactor: Method = {
  id: 'bishop-factor',
  title: "Root of Bishop's equation",
  says: 'The factor stands on both sides: it divides the friction in each slice, and is the sum of what the slices resist over the sum of what drives. The one value at which both agree.',
  takes: { slope: 'angle', strength: 'force_per_length', phi: 'angle', shear: 'force_per_length' },
  run: numbers => {
    const listed = (name: 'slope' | 'strength'): readonly number[] => [numbers[name] ?? []].flat()
    const [angles, strengths] = [listed('slope'), listed('strength')]
    const [friction, shear] = [Math.tan(Number(numbers.phi)), Number(numbers.shear)]
    const slices = angles.map((angle, at) => ({
      sine: Math.sin(angle),
      cosine: Math.cos(angle),
      strength: strengths[at] ?? Number.NaN,
    }))
    const factor = bishopRoot(slices, friction, shear)
    if (!(factor > 0 && Number.isFinite(factor))) return { ok: false, says: 'no factor balances the slices' }
    return { ok: true, values: { factor }, verified: 'put back in the lines that follow' }
  },
}
