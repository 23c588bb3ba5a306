import type { Input, Limit, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { angle, choice, choiceLimit, length, quantity, ratio, step, unitWeight, when } from '../words.ts'
import { angleUnit, lengthUnit, lineLoadUnit, weightUnit } from './ground-units.ts'

/** What of the ground before the toe is counted against sliding: nothing, unless the author says otherwise. */
export const groundInFront = {
  front: choice({
    says: 'ground before the toe, against sliding',
    words: {
      none: 'none: what can be dug away does not hold',
      'force given': 'a passive force that is given as `passive`',
      reckoned: 'that of Rankine, over a depth that stays for good, divided by a factor',
    },
    default: 'none',
  }),
  passive: quantity('force_per_length', {
    says: 'passive force in front of the wall',
    note: 'Only of ground that nobody will ever dig away',
    symbol: 'P_p',
    unit: lineLoadUnit,
    least: '0 kN/m',
    optional: true,
  }),
  front_depth: length({
    says: 'ground that stays before the toe, above the underside of the base',
    note: 'Less what a trench, scour, frost or a garden may take: half a metre at least',
    symbol: 'h_fr',
    unit: lengthUnit,
    above: '0 m',
    usual: ['0.2 m', '1.5 m'],
    optional: true,
  }),
  front_phi: angle({
    says: 'effective angle of friction of the ground before the toe, a low value',
    symbol: "phi'_fr",
    unit: angleUnit,
    least: '15 deg',
    most: '45 deg',
    usual: ['20 deg', '40 deg'],
    optional: true,
  }),
  front_gamma: unitWeight({
    says: 'its unit weight, a low value: submerged where water can stand there',
    symbol: 'gamma_fr',
    unit: weightUnit,
    least: '5 kN/m^3',
    most: '23 kN/m^3',
    optional: true,
  }),
  front_factor: ratio({
    says: 'factor that divides its passive force',
    note: 'The whole of it comes only with more movement than a wall should make',
    symbol: 'F_fr',
    least: '1',
    most: '4',
    usual: ['1.5', '3'],
    default: '2',
    source: cite('practice', 'half the passive force'),
    when: { choice: 'front', is: ['reckoned'] },
  }),
} satisfies Readonly<Record<string, Input>>

const wanted: readonly (readonly [string, string, string])[] = [
  ['force given', 'passive', 'the passive force is given'],
  ['reckoned', 'front_depth', 'the depth of the ground before the toe is given'],
  ['reckoned', 'front_phi', 'the friction of the ground before the toe is given'],
  ['reckoned', 'front_gamma', 'the unit weight of the ground before the toe is given'],
]

/** What is counted is given, and what is given is counted. */
export const frontLimits: readonly Limit[] = [
  ...wanted.map(
    ([word, name, says]): Limit => ({
      holds: { given: name },
      when: { choice: 'front', is: [word] },
      says,
      advice: `Give \`${name}\``,
      otherwise: 'refuse',
      on: 'front',
    }),
  ),
  choiceLimit('front', ['force given'], {
    when: { given: 'passive' },
    says: 'a passive force that is given is counted',
    advice: 'Choose `force given` for `front`, or leave `passive` out',
    otherwise: 'refuse',
    on: 'passive',
  }),
  ...['front_depth', 'front_phi', 'front_gamma'].map(
    (name): Limit =>
      choiceLimit('front', ['reckoned'], {
        when: { given: name },
        says: 'ground before the toe that is given is counted',
        advice: `Choose \`reckoned\` for \`front\`, or leave \`${name}\` out`,
        otherwise: 'refuse',
        on: name,
      }),
  ),
]

const resists = (formula: string): Step =>
  step('R_s', formula, {
    says: 'resistance to sliding',
    unit: lineLoadUnit,
    source: cite('das-foundation', 'from memory'),
  })
const onBase = 'V_b * tan(delta_b) + B * c_a'

/** Steps where all of these are given; a limit refuses the block where one is not. */
const given = (names: readonly string[], steps: readonly Step[]): readonly Step[] =>
  names.reduceRight<readonly Step[]>(
    (inner, name) => [when({ given: name }, { yes: inner, no: [resists(onBase)] })],
    steps,
  )

/** Resistance to sliding, with what is counted before the toe. */
export const slidingResistance: Step = when(
  { choice: 'front', is: ['reckoned'] },
  {
    yes: given(
      ['front_phi', 'front_depth', 'front_gamma'],
      [
        step('K_p', 'tan(45 deg + front_phi / 2)^2', { says: 'passive coefficient', source: cite('rankine') }),
        step('P_fr', 'K_p * front_gamma * front_depth^2 / (2 * front_factor)', {
          says: 'passive force that is counted on',
          unit: lineLoadUnit,
          source: cite('rankine'),
        }),
        resists(`${onBase} + P_fr`),
      ],
    ),
    no: [
      when(
        { choice: 'front', is: ['force given'] },
        { yes: given(['passive'], [resists(`${onBase} + passive`)]), no: [resists(onBase)] },
      ),
    ],
  },
)
