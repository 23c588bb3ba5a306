import type { Method, Solved } from '../method.ts'
import { integrate } from '../numerics/integrate.ts'
import { NumericRefusal } from '../numerics/numeric-refusal.ts'

interface Layer {
  readonly top: number
  readonly bottom: number
  readonly E: number
  readonly nu: number
}

/** Shortening of elastic layers under the centre of a flexible rectangle, from the strain at each depth. */
export const centreStrain: Method = {
  id: 'centre-strain',
  title: 'Strain under the centre added up',
  says: 'Adaptive Gauss-Kronrod quadrature over the depth of each layer: the upright strain of an elastic half-space from the upright stress and the sum of the stresses, which is the solid angle of the base.',
  takes: { width: 'length', length: 'length', pressure: 'pressure', thickness: 'length', E: 'pressure', nu: 'ratio' },
  run: numbers => {
    const at = (name: string): number => Number(numbers[name])
    try {
      return solved({ a: at('width') / 2, b: at('length') / 2, q: at('pressure') }, layersOf(numbers))
    } catch (fault) {
      if (fault instanceof NumericRefusal) return { ok: false, says: fault.message }
      throw fault
    }
  },
}

function layersOf(numbers: Readonly<Record<string, number | readonly number[]>>): readonly Layer[] {
  const list = (name: string) => numbers[name] as readonly number[]
  let bottom = 0
  return list('thickness').map((thickness, i) => {
    const top = bottom
    bottom += thickness
    return { top, bottom, E: list('E')[i] ?? Number.NaN, nu: list('nu')[i] ?? Number.NaN }
  })
}

interface Base {
  readonly a: number
  readonly b: number
  readonly q: number
}

function solved(base: Base, layers: readonly Layer[]): Solved {
  const parts = layers.map(layer =>
    integrate(z => strain(base, layer, z), { from: layer.top, to: layer.bottom, relative: 1e-9 }),
  )
  const evaluations = parts.reduce((sum, part) => sum + part.evaluations, 0)
  return {
    ok: true,
    values: { settlement: parts.reduce((sum, part) => sum + part.value, 0) },
    verified: `${evaluations} depths; estimated error less than 1 part in a million`,
  }
}

/** Upright strain at depth z under the centre: E e = (1 + nu) s_z - nu (sum of the three stresses). */
function strain({ a, b, q }: Base, { E, nu }: Layer, z: number): number {
  const root = Math.hypot(a, b, z)
  const corner = Math.atan2(a * b, z * root)
  const upright = (2 / Math.PI) * (corner + ((a * b * z) / root) * (1 / (a * a + z * z) + 1 / (b * b + z * z)))
  const all = ((1 + nu) * 4 * corner) / Math.PI
  return (q * ((1 + nu) * upright - nu * all)) / E
}
