import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step, when } from '../words.ts'
import { amperes } from './power-units.ts'

const rule = cite('iec-60364-4-43', '433.1')
const continuous = cite('nec', '690.9, 1.25 times what flows on, memory')
const opening = (ratio: string, source: ReturnType<typeof cite>): Step =>
  step('k_2', ratio, { says: 'current at which it is sure to open, over the rated one', source })
const fuse = (ratio: string): Step => opening(ratio, cite('iec-60269', 'conventional fusing current'))

/** A charger drives its current for hours, and a fuse for general use holds its rated current only in free air. */
const charging: Step = when(
  { given: 'charging_current' },
  {
    yes: [
      step('I_cont', '1.25 * charging_current', {
        says: 'rating that holds the charging current for hours',
        unit: amperes,
        source: continuous,
      }),
      check('fuse_holds', 'fuse >= I_cont', {
        says: 'the fuse holds the charging current for hours',
        source: continuous,
      }),
    ],
  },
)

/** The two conditions for a fuse and the cable behind it: by its rated current, and by the current at which it is sure to open. */
export const fuseSteps: readonly Step[] = [
  check('fuse_carries', 'current <= fuse', {
    says: 'the fuse carries the running current',
    source: rule,
  }),
  check('fuse_protects', 'fuse <= ampacity', {
    says: 'the fuse protects the cable',
    source: rule,
  }),
  charging,
  when(
    { choice: 'device', is: ['fuse'] },
    {
      yes: [
        when(
          { formula: 'fuse >= 16 A' },
          {
            says: 'a fuse of 16 A or more',
            yes: [fuse('1.6')],
            no: [
              when(
                { formula: 'fuse > 4 A' },
                { says: 'a fuse of more than 4 A', yes: [fuse('1.9')], no: [fuse('2.1')] },
              ),
            ],
          },
        ),
      ],
      no: [opening('1.45', rule)],
    },
  ),
  step('I_2', 'k_2 * fuse', { says: 'current at which it is sure to open', unit: amperes }),
  check('fuse_opens', 'I_2 <= 1.45 * ampacity', {
    says: 'a small overload opens the fuse before it spoils the cable',
    source: rule,
  }),
]
