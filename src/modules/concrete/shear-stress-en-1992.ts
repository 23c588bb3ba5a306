import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { step } from '../words.ts'

const stress = { SI: 'MPa', US: 'psi' }
const clause = (at: string) => cite('en-1992-1-1', at)

/** Design strength `f_cd`. */
export const designStrength: Step = step('f_cd', 'alpha_cc * f_ck / gamma_c', {
  says: 'design strength of the concrete',
  unit: stress,
  source: clause('Eq. 3.15'),
})

/** Factor `nu` on the strength of concrete that shear has cracked. */
export const crackedFactor: Step = step('nu', '0.6 * (1 - f_ck / (250 MPa))', {
  says: 'factor for cracked concrete',
  symbol: 'nu_c',
  source: clause('Eq. 6.6N'),
})

interface Carried {
  readonly depth: string
  /** Formula of the steel ratio, before its limit. */
  readonly ratio: string
  /** Clause of size and steel, and equation of the stress. */
  readonly at: string
  readonly equation: string
}

/** Stresses that concrete without shear steel carries: by the steel, `v_steel`, and at least, `v_min`. */
export const stressesCarried = ({ depth, ratio, at, equation }: Carried): readonly Step[] => [
  step('k_d', `min(1 + sqrt(200 mm / ${depth}), 2)`, {
    says: 'factor for the size of the member',
    symbol: 'k',
    source: clause(at),
  }),
  step('rho_c', `min(${ratio}, 0.02)`, { says: 'steel that counts', source: clause(at) }),
  step('v_steel', '0.18 / gamma_c * k_d * cbrt(100 * rho_c * f_ck / (1 MPa)) * (1 MPa)', {
    says: 'shear stress by the steel in tension',
    symbol: 'v_rho',
    unit: stress,
    source: clause(`Eq. ${equation}`),
  }),
  step('v_min', '0.035 * sqrt(k_d^3 * f_ck / (1 MPa)) * (1 MPa)', {
    says: 'least shear stress',
    unit: stress,
    source: clause('Eq. 6.3N'),
  }),
]
