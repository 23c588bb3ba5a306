import type { Method, Solved } from '../method.ts'
import { findRoot } from '../numerics/find-root.ts'
import { gaussLegendre } from '../numerics/gauss-legendre.ts'

/** Strain at the end of the parabola and at crushing; plateau over f_ck; E_s; design steel stress over f_y (IS 456 cl. 38.1). */
const law = { parabola: 0.002, crushing: 0.0035, plateau: 0.67 / 1.5, modulus: 200e9, yields: 0.87 }

type Section = {
  readonly b: number
  readonly d: number
  readonly area: number
  readonly f_ck: number
  readonly f_y: number
}

/**
 * Neutral axis and moment of a singly reinforced rectangle by plane strains: concrete 0.0035 at its edge, parabola to
 * 0.002, then the plateau 0.67 f_ck / 1.5; steel straight to 0.87 f_y, then level, E_s = 200 GPa.
 * Refuses a section whose forces do not balance with the neutral axis inside the effective depth.
 */
export const flexureIs456Section: Method = {
  id: 'flexure-is-456-section',
  title: 'Plane strains, parabola and plateau',
  says: "Stresses integrated over the compressed depth (Gauss-Legendre, 16 places each on parabola and plateau); the neutral axis where the forces balance, by Brent's method; concrete 0.0035 at the edge, steel straight to `0.87 * f_y`, then level.",
  takes: { b: 'length', d: 'length', area: 'area', f_ck: 'stress', f_y: 'stress' },
  run: ({ b, d, area, f_ck, f_y }) =>
    solved({ b: Number(b), d: Number(d), area: Number(area), f_ck: Number(f_ck), f_y: Number(f_y) }),
}

function solved(section: Section): Solved {
  const { d, b, f_ck } = section
  const pull = (x: number) => compression(section, x).force - tension(section, x)
  if (!(pull(d) > 0)) return { ok: false, says: 'the forces do not balance within the effective depth' }
  const { root: x } = findRoot(pull, { from: 1e-9 * d, to: d })
  const { force, moment } = compression(section, x)
  const off = Math.abs(pull(x)) / (f_ck * b * d)
  return {
    ok: true,
    values: { x, moment: moment + force * (d - x), steel: tension(section, x) / section.area },
    verified:
      off < 1e-9
        ? 'the forces balance to nine figures'
        : `the forces differ by ${off.toExponential(0)} of \`f_ck * b * d\``,
  }
}

/** Force in the concrete, and its moment about the neutral axis. */
function compression({ b, f_ck }: Section, x: number): { readonly force: number; readonly moment: number } {
  const turn = (x * law.parabola) / law.crushing
  const parts = [strip({ b, f_ck }, { x, from: 0, to: turn }), strip({ b, f_ck }, { x, from: turn, to: x })]
  return parts.reduce((sum, part) => ({ force: sum.force + part.force, moment: sum.moment + part.moment }))
}

const rule = gaussLegendre(16)

type Reach = { readonly x: number; readonly from: number; readonly to: number }

/** Concrete between two heights above the neutral axis. */
function strip({ b, f_ck }: Pick<Section, 'b' | 'f_ck'>, { x, from, to }: Reach) {
  let [force, moment] = [0, 0]
  rule.places.forEach((s, i) => {
    const height = from + ((1 + s) / 2) * (to - from)
    const part = concreteStress((law.crushing * height) / x, f_ck) * b * ((to - from) / 2) * (rule.weights[i] ?? 0)
    force += part
    moment += part * height
  })
  return { force, moment }
}

function concreteStress(strain: number, f_ck: number): number {
  const share = Math.min(1, strain / law.parabola)
  return law.plateau * f_ck * (2 * share - share * share)
}

function tension({ area, d, f_y }: Section, x: number): number {
  return area * Math.min(law.yields * f_y, (law.modulus * law.crushing * (d - x)) / x)
}
