import type { Method, Solved } from '../method.ts'
import { findRoot } from '../numerics/find-root.ts'
import { gaussLegendre } from '../numerics/gauss-legendre.ts'

/** How concrete and steel of a code behave in bending; E_s is 200 GPa. */
export interface StressLaw {
  /** Strains between which the concrete has one formula, rising; the last is that of crushing. */
  readonly turns: readonly number[]
  /** Concrete stress at a strain, as a share of its peak. */
  readonly shape: (strain: number) => number
  /** The peak over the strength taken, and the design stress of the steel over the strength taken. */
  readonly peak: number
  readonly yields: number
}

/** Names under which a code takes its two strengths. */
export interface StrengthNames {
  readonly concrete: string
  readonly steel: string
}

interface Section {
  readonly b: number
  readonly d: number
  readonly area: number
  readonly concrete: number
  readonly steel: number
  readonly law: StressLaw
}

const modulus = 200e9
const crushing = ({ turns }: StressLaw): number => turns.at(-1) ?? Number.NaN

/**
 * Neutral axis and moment of a singly reinforced rectangle by plane strains, the concrete crushing at its edge; steel straight to its
 * design stress, then level. Refuses a section whose forces do not balance with the neutral axis inside the effective depth.
 */
export const sectionMethod = (
  about: Pick<Method, 'id' | 'title' | 'says'>,
  { concrete, steel }: StrengthNames,
  law: StressLaw,
): Method => ({
  ...about,
  takes: { b: 'length', d: 'length', area: 'area', [concrete]: 'stress', [steel]: 'stress' },
  run: numbers =>
    solved({
      b: Number(numbers.b),
      d: Number(numbers.d),
      area: Number(numbers.area),
      concrete: Number(numbers[concrete]),
      steel: Number(numbers[steel]),
      law,
    }),
})

function solved(section: Section): Solved {
  const { d, b, concrete } = section
  const pull = (x: number) => compression(section, x).force - tension(section, x)
  const shallow = 1e-9 * d
  if (!(pull(shallow) < 0 && pull(d) > 0))
    return { ok: false, says: 'the forces do not balance within the effective depth' }
  const { root: x } = findRoot(pull, { from: shallow, to: d })
  const { force, moment } = compression(section, x)
  const off = Math.abs(pull(x)) / (concrete * b * d)
  return {
    ok: true,
    values: { x, moment: moment + force * (d - x), steel: tension(section, x) / section.area },
    verified:
      off < 1e-9
        ? 'the forces balance to nine figures'
        : `the forces differ by ${off.toExponential(0)} of the strength times width and depth`,
  }
}

/** Force in the concrete, and its moment about the neutral axis. */
function compression(section: Section, x: number): { readonly force: number; readonly moment: number } {
  const { turns } = section.law
  return turns
    .map((to, i) => strip(section, { x, from: turns[i - 1] ?? 0, to }))
    .reduce((sum, part) => ({ force: sum.force + part.force, moment: sum.moment + part.moment }))
}

const rule = gaussLegendre(16)

type Reach = { readonly x: number; readonly from: number; readonly to: number }

/** Concrete between two strains. */
function strip({ b, concrete, law }: Section, { x, from, to }: Reach) {
  const perStrain = x / crushing(law)
  let [force, moment] = [0, 0]
  rule.places.forEach((s, i) => {
    const strain = from + ((1 + s) / 2) * (to - from)
    const deep = ((to - from) / 2) * perStrain * (rule.weights[i] ?? 0)
    const part = law.peak * concrete * law.shape(strain) * b * deep
    force += part
    moment += part * strain * perStrain
  })
  return { force, moment }
}

function tension({ area, d, steel, law }: Section, x: number): number {
  return area * Math.min(law.yields * steel, (modulus * crushing(law) * (d - x)) / x)
}

/** A parabola to its top at a strain, then level. */
export const parabolaAndPlateau =
  (top: number) =>
  (strain: number): number => {
    const share = Math.min(1, strain / top)
    return 2 * share - share * share
  }
