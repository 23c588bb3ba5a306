import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { check, step, when } from '../words.ts'
import { barArea, barSteps, size } from './bar-steps.ts'

interface Direction {
  /** Ends the names: `v` of the upright bars, `h` of the level ones. */
  readonly of: 'v' | 'h'
  readonly words: string
  /** Diameter and spacing of the bars of the wall. */
  readonly bar: string
  readonly spacing: string
  /** Size of the opening across these bars. */
  readonly across: string
  readonly bars: string
}

const rule: Citation = cite('practice', 'half of what is cut, each side')

/** What the opening cuts of the bars of one direction, what each side must have, and whether it has it. */
const direction = ({ of, words, bar, spacing, across, bars }: Direction): readonly Step[] => {
  const cut = (formula: string) =>
    step(`A_cut_${of}`, formula, { says: `${words} steel cut at one face`, unit: barArea })
  const needed = (formula: string, source: Citation) =>
    step(`A_side_${of}`, formula, { says: `${words} steel needed at each side and face`, unit: barArea, source })
  return [
    when(
      { formula: `${across} + ${bar} + 2 * (50 mm) > ${spacing}` },
      {
        says: `the opening does not pass between the ${words} bars`,
        yes: [
          step(`n_cut_${of}`, `floor((${across} + ${bar}) / ${spacing}) + 1`, {
            says: `most ${words} bars at one face that it meets`,
          }),
          cut(`n_cut_${of} * pi / 4 * ${bar}^2`),
        ],
        no: [cut('0 mm^2')],
      },
    ),
    when(
      { choice: 'least_rule', is: ['ACI 318'] },
      {
        yes: [needed(`max(0.5 * A_cut_${of}, 0.31 in^2)`, cite('aci-318', '11.7.5.1'))],
        no: [needed(`0.5 * A_cut_${of}`, rule)],
      },
    ),
    check(`replaced_${of}`, `${bars} * A_phi >= A_side_${of}`, {
      says: `${words} trimming bars at each side and face`,
      source: rule,
    }),
  ]
}

const past = (name: string, opening: string, says: string): Step =>
  step(name, `${opening} + 2 * anchorage`, { says, unit: size, source: cite('practice', 'past both edges') })
const fits = (name: string, room: string, says: string): Step =>
  check(name, `${room} >= anchorage`, { says, aspect: 'geometry', source: cite('practice', 'past both edges') })

/** Both directions, the lengths of the bars, and the room for them. */
export const wallOpeningSteps: readonly Step[] = [
  ...barSteps,
  ...direction({
    of: 'v',
    words: 'upright',
    bar: 'vertical_bar',
    spacing: 'vertical_spacing',
    across: 'width',
    bars: 'upright_bars',
  }),
  ...direction({
    of: 'h',
    words: 'level',
    bar: 'horizontal_bar',
    spacing: 'horizontal_spacing',
    across: 'height',
    bars: 'level_bars',
  }),
  past('L_v', 'height', 'length of the upright trimming bars'),
  past('L_h', 'width', 'length of the level trimming bars'),
  when(
    { choice: 'shape', is: ['rectangular'] },
    {
      yes: [
        step('L_c', '2 * anchorage', {
          says: 'length of the diagonal bar at each corner and face',
          symbol: 'L_dia',
          unit: size,
          source: cite('practice', 'anchored both ways from the corner'),
        }),
      ],
    },
  ),
  fits('room_level', 'room_beside', 'room for the level bars beside the opening'),
  fits('room_upright', 'room_above', 'room for the upright bars above and below it'),
]
