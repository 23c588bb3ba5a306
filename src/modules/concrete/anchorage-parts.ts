import type { Input, Limit, Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { check, length, limit, ratio, when } from '../words.ts'
import { size } from './bar-steps.ts'

export const barDiameter: Input = length({
  says: 'diameter of the bar',
  symbol: 'phi',
  unit: size,
  least: '5 mm',
  most: '40 mm',
})

/** Stress in the bar as part of its design strength. */
export const usedStrength: Input = ratio({
  says: 'part of the design strength that the bar uses there',
  note: 'Steel needed over steel provided at the section; 1 where in doubt',
  symbol: 'k_used',
  above: '0',
  most: '1',
  default: '1',
  source: cite('practice'),
})

/** The same where the bars are lapped: a lap lies at another section, and is often moved, so full strength is the rule. */
export const usedAtLap: Input = ratio({
  says: 'part of the design strength that the bar uses at the lap',
  note: 'The lap is not shortened by `used`, which is of another section. Less than 1 only where the stress at the lap itself is worked and the drawing holds the lap there',
  symbol: 'k_lap',
  above: '0',
  most: '1',
  default: '1',
  source: cite('practice'),
})

/** Lengths that the drawing gives the bar. */
export const lengthsGiven = {
  available: length({
    says: 'length of the bar past the section where its stress is needed',
    note: 'Measured along the bar; for a bend or hook as the code measures it',
    symbol: 'l_av',
    unit: size,
    above: '0 mm',
    usual: ['100 mm', '4 m'],
  }),
  lap_planned: length({
    says: 'lap that is planned',
    symbol: 'l_lap',
    unit: size,
    above: '0 mm',
    usual: ['200 mm', '4 m'],
    optional: true,
  }),
} satisfies Readonly<Record<string, Input>>

export const checkAnchored = (formula: string, source: Citation): Step =>
  check('anchored', formula, { says: 'length past the section against the length needed', source })

/** The lap, where one is planned. */
export const checkLap = (formula: string, source: Citation): Step =>
  when(
    { given: 'lap_planned' },
    { yes: [check('lapped', formula, { says: 'lap planned against the lap needed', source })] },
  )

/** The largest bar that a code lets be lapped, where a lap is planned. */
export const lappedUpTo = (
  holds: string,
  more: { readonly says: string; readonly advice: string; readonly source: Citation },
): Limit => limit(holds, { ...more, when: { given: 'lap_planned' }, otherwise: 'refuse', on: 'bar_size' })

export const anchorageCautions = [
  'Stagger laps, and keep them away from where the moment is largest. Starter bars from the raft are lapped where the wall bends most: check that lap first.',
  'The length is that from the section where the stress is needed, not from the face of the support.',
]
