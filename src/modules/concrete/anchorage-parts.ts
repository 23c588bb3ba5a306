import type { Input, Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { check, length, ratio, when } from '../words.ts'
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

export const anchorageCautions = [
  'Stagger laps, and keep them away from where the moment is largest. Starter bars from the raft are lapped where the wall bends most: check that lap first.',
  'The length is that from the section where the stress is needed, not from the face of the support.',
]
