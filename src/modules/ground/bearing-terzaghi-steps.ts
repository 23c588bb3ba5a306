import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { look, step, when } from '../words.ts'
import { allowable } from './bearing-allowable.ts'
import { byStrength, overburden, totalOverburden, weightBelow } from './bearing-steps.ts'
import { angleUnit, pressureUnit } from './ground-units.ts'
import { terzaghiNc, terzaghiNgamma, terzaghiNq } from './terzaghi-factors.ts'

const terzaghi = cite('terzaghi-1943', 'from memory')
const stress = (name: string, formula: string, more: { says: string; source?: Citation; symbol?: string }): Step =>
  step(name, formula, { source: terzaghi, ...more, unit: pressureUnit })

/** The line of each shape, by a choice of two. */
const byShape = (line: (cohesion: string, weight: string) => Step): Step =>
  when(
    { choice: 'shape', is: ['strip'] },
    {
      yes: [line('', '0.5 * ')],
      no: [
        when({ choice: 'shape', is: ['square'] }, { yes: [line('1.3 * ', '0.4 * ')], no: [line('1.3 * ', '0.3 * ')] }),
      ],
    },
  )

/** Terms with these names for the strength that counts. */
const drained = (phi: string, c: string): readonly Step[] => [
  look('N_c', terzaghiNc, { row: phi, says: 'factor of the cohesion' }),
  look('N_q', terzaghiNq, { row: phi, says: 'factor of the overburden' }),
  look('N_gamma', terzaghiNgamma, { row: phi, says: 'factor of the weight' }),
  weightBelow('width'),
  byShape((cohesion, weight) =>
    stress('q_R', `${cohesion}${c} * N_c + q_eff * N_q + ${weight}gamma_below * width * N_gamma`, {
      says: 'effective bearing resistance: cohesion, overburden, weight',
      symbol: "q'_R",
    }),
  ),
  stress('q_gross', 'q_R + u', { says: 'gross, in total stress', symbol: 'q_g', source: cite('statics') }),
  stress('q_net', 'q_R - q_eff', { says: 'net of the overburden', symbol: 'q_n', source: cite('statics') }),
  ...allowable('pressure - u - q_eff'),
]

const undrained = (c_u: string): readonly Step[] => [
  totalOverburden,
  step('N_c', '1.5 * pi + 1', { says: 'factor of the cohesion without friction', source: terzaghi }),
  byShape(cohesion => stress('q_net', `${cohesion}${c_u} * N_c`, { says: 'net of the overburden', symbol: 'q_n' })),
  stress('q_gross', 'q_net + q_tot', { says: 'gross, in total stress', symbol: 'q_g' }),
  ...allowable('pressure - q_tot'),
]

const twoThirds = (name: string, of: string, more: { says: string; symbol: string }): Step =>
  stress(name, `2 / 3 * ${of}`, more)
const looseFriction = step('phi_s', 'atan(2 / 3 * tan(phi))', {
  says: 'friction that counts in local shear',
  symbol: "phi'_loc",
  unit: angleUnit,
  source: terzaghi,
})
const local = (steps: readonly Step[], general: readonly Step[]): Step =>
  when({ choice: 'shear', is: ['local'] }, { yes: steps, no: general })

/** Terzaghi's resistance and the pressure that it allows. */
export const bearingTerzaghiSteps: readonly Step[] = [
  ...overburden,
  byStrength(
    [
      local(
        [
          looseFriction,
          twoThirds('c_s', 'c', { says: 'cohesion that counts in local shear', symbol: "c'_loc" }),
          ...drained('phi_s', 'c_s'),
        ],
        drained('phi', 'c'),
      ),
    ],
    [
      local(
        [
          twoThirds('c_us', 'c_u', { says: 'strength that counts in local shear', symbol: 'c_u_loc' }),
          ...undrained('c_us'),
        ],
        undrained('c_u'),
      ),
    ],
  ),
]
