import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { each, step, when } from '../words.ts'
import { angleUnit, pressureUnit } from './ground-units.ts'

const K = (name: string, formula: string, more: { says: string; symbol: string; source: Citation }): Step =>
  step(name, formula, more)

/** K_0 of one layer under the name `name`: Jaky, or the overconsolidated form where `OCR` is given. */
const coefficientAtRest = (name: string): Step =>
  when(
    { given: 'OCR' },
    {
      yes: [
        K('K_p', 'tan(45 deg + phi / 2)^2', {
          says: 'passive coefficient, the upper bound',
          symbol: 'K_p',
          source: cite('rankine'),
        }),
        K(name, 'min((1 - sin(phi)) * OCR^sin(phi), K_p)', {
          says: 'coefficient at rest, overconsolidated, not above the passive one',
          symbol: 'K_0',
          source: cite('mayne-kulhawy'),
        }),
      ],
      no: [K(name, '1 - sin(phi)', { says: 'coefficient at rest', symbol: 'K_0', source: cite('jaky') })],
    },
  )

/** How far an angle stands above what the layer's friction allows; summed over the layers by a limit. */
const excess = (formula: string, says: string): Step =>
  step('excess', formula, { says, symbol: 'phi_ex', unit: angleUnit })
const slopeExcess = excess('max(alpha - phi, 0 deg)', 'slope of the ground above the angle of friction')
const cohesionPart = (sign: '' | '-'): Step =>
  step('p_c', `${sign}2 * c * sqrt(K_h)`, {
    says: sign ? 'what cohesion takes off the pressure' : 'what cohesion adds to the pressure',
    symbol: 'p_c',
    unit: pressureUnit,
    source: cite('rankine', 'with cohesion'),
  })
const slopeRoot = step('k_r', 'sqrt(cos(alpha)^2 - cos(phi)^2)', {
  says: 'root in the coefficient for sloping ground',
  source: cite('rankine', 'sloping ground'),
})

const atRest: Step = when(
  { given: 'alpha' },
  {
    yes: [
      each('layers', [
        slopeExcess,
        coefficientAtRest('K_0'),
        K('K_h', 'K_0 * (1 + sin(alpha))', {
          says: 'horizontal coefficient at rest under sloping ground',
          symbol: 'K_0alpha',
          source: cite('en-1997-1', '9.5.2(4), from memory'),
        }),
      ]),
    ],
    no: [each('layers', [coefficientAtRest('K_h')])],
  },
)

const rankine = (side: 'a' | 'p'): Step => {
  const [name, sign, says] =
    side === 'a' ? (['K_a', '-', 'active coefficient'] as const) : (['K_p', '+', 'passive coefficient'] as const)
  const over = side === 'a' ? '+' : '-'
  return when(
    { given: 'alpha' },
    {
      yes: [
        each('layers', [
          slopeExcess,
          slopeRoot,
          K(name, `cos(alpha) * (cos(alpha) ${sign} k_r) / (cos(alpha) ${over} k_r)`, {
            says: `${says}, pressure parallel to the ground`,
            symbol: name,
            source: cite('rankine', 'sloping ground'),
          }),
          K('K_h', `${name} * cos(alpha)`, { says: 'its horizontal part', symbol: 'K_h', source: cite('statics') }),
          cohesionPart(side === 'a' ? '-' : ''),
        ]),
      ],
      no: [
        each('layers', [
          K('K_h', `tan(45 deg ${sign} phi / 2)^2`, { says, symbol: name, source: cite('rankine') }),
          cohesionPart(side === 'a' ? '-' : ''),
        ]),
      ],
    },
  )
}

const orNothing = (name: string, input: string, more: { says: string; none: string }): Step =>
  when(
    { given: input },
    {
      yes: [step(name, input, { says: more.says, unit: angleUnit })],
      no: [step(name, '0 deg', { says: more.none, unit: angleUnit })],
    },
  )

const coulomb: readonly Step[] = [
  orNothing('delta_w', 'delta', {
    says: 'friction on the wall',
    none: 'friction on the wall is left out, on the safe side',
  }),
  orNothing('alpha_g', 'alpha', { says: 'the ground rises from the wall', none: 'the ground is level' }),
  each('layers', [
    excess('max(delta_w - phi, alpha_g - phi, 0 deg)', 'wall friction or slope above the angle of friction'),
    step('r_C', 'sqrt(sin(phi + delta_w) * sin(phi - alpha_g) / (cos(delta_w) * cos(alpha_g)))', {
      says: 'root in the coefficient, vertical wall',
      source: cite('coulomb'),
    }),
    K('K_a', 'cos(phi)^2 / (cos(delta_w) * (1 + r_C)^2)', {
      says: 'active coefficient, pressure at the angle of wall friction',
      symbol: 'K_a',
      source: cite('coulomb'),
    }),
    K('K_h', 'K_a * cos(delta_w)', { says: 'its horizontal part', symbol: 'K_h', source: cite('statics') }),
  ]),
]

/** K_h of every layer, and the part of cohesion where the state has one, by the state of pressure. */
export const coefficients: Step = when(
  { choice: 'state', is: ['at rest'] },
  {
    yes: [atRest],
    no: [
      when(
        { choice: 'state', is: ['active Coulomb'] },
        {
          yes: coulomb,
          no: [
            when(
              { choice: 'state', is: ['active'] },
              {
                yes: [rankine('a')],
                no: [rankine('p')],
              },
            ),
          ],
        },
      ),
    ],
  },
)

/** Compaction pressure of each layer's fill, where a roller is given. */
export const compaction: Step = when(
  { given: 'roller' },
  {
    yes: [
      each('layers', [
        step('p_least', 'sqrt(2 * roller * gamma / pi)', {
          says: 'least pressure, which compaction leaves',
          symbol: 'sigma_hm',
          unit: pressureUnit,
          source: cite('ingold'),
        }),
      ]),
    ],
  },
)
