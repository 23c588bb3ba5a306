import type { Method } from '../method.ts'
import type { Step } from '../module.ts'
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
