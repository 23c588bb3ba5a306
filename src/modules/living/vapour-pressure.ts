import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { step } from '../words.ts'

/** The line `name` = saturation pressure of water vapour at a temperature, by the form of Magnus. */
export const vapourPressure = (name: string, of: string, says: string): Step =>
  step(name, `(611.2 Pa) * exp(17.62 * (${of} / degC) / (243.12 + ${of} / degC))`, {
    says,
    unit: { SI: 'Pa', US: 'Pa' },
    source: cite('magnus'),
  })
