import type { Method } from '../method.ts'
import type { Comparison, Step } from '../module.ts'
import type { Citation } from '../sources.ts'
import { solve, step } from '../words.ts'

/** The section of a flexure module by plane strains: what it takes, and the moment per width as a formula over `M_strain`. */
export interface StrainSection {
  readonly method: Method
  readonly takes: Readonly<Record<string, string>>
  readonly source: Citation
  readonly perWidth: string
  readonly says: string
}

/** Neutral axis, moment and steel stress of the section by plane strains, and the moment per width. */
export const strainSteps = ({ method, takes, source, perWidth, says }: StrainSection): readonly Step[] => [
  solve(method, {
    takes,
    gives: {
      x: {
        dimension: 'length',
        name: 'x_strain',
        says: 'depth of the neutral axis',
        symbol: 'x_strain',
        unit: { SI: 'mm', US: 'in' },
      },
      moment: {
        dimension: 'moment',
        name: 'M_strain',
        says: 'moment that the strip carries',
        symbol: 'M_strain',
        unit: { SI: 'kN*m', US: 'lbf*in' },
      },
      steel: {
        dimension: 'stress',
        name: 'f_st',
        says: 'stress in the steel',
        symbol: 'f_st',
        unit: { SI: 'MPa', US: 'psi' },
      },
    },
    says: 'the section at failure',
    source,
  }),
  step('M_R_strain', perWidth, { says, unit: { SI: 'kN*m/m', US: 'lbf*ft/ft' } }),
]

/** Where the answers of a code with a limiting neutral axis must agree with the strains, and how well. */
export interface StrainBands {
  /** Names of the depth of the neutral axis and of its limit. */
  readonly axis: string
  readonly limit: string
  readonly moment: number
  readonly depth: number
  readonly says: string
}

/** Moment and neutral axis while the axis keeps its limit; beyond it the code stops short of the strains. */
export const strainComparisons = ({ axis, limit, moment, depth, says }: StrainBands): readonly Comparison[] => {
  const within = { formula: `${axis} <= ${limit}` }
  return [
    { first: 'M_R', second: 'M_R_strain', band: moment, says, when: within },
    { first: axis, second: 'x_strain', band: depth, says, when: within },
    {
      first: 'M_R',
      second: 'M_R_strain',
      band: 0.5,
      says: 'over-reinforced: the code stops at the limiting moment, the strains carry more',
      when: { formula: `${axis} > ${limit}` },
    },
  ]
}
