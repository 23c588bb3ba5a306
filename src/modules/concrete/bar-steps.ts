import type { ChoiceInput, Step } from '../module.ts'
import { choice, look, step, when } from '../words.ts'
import { barWords, metricDiameter, usArea, usBars, usDiameter } from './bar-tables.ts'

export const size = { SI: 'mm', US: 'in' }
export const barArea = { SI: 'mm^2', US: 'in^2' }
export const steelPerWidth = { SI: 'mm^2/m', US: 'in^2/ft' }
export const strength = { SI: 'MPa', US: 'psi' }

/** The bar, metric or US. */
export const barInput: ChoiceInput = choice({
  says: 'bar',
  note: 'A metric size or a US number',
  words: barWords,
})

const isUs = { choice: 'bar_size', is: usBars }
const diameter = { row: 'bar_size', says: 'nominal diameter of the bar', symbol: 'phi', unit: size }

/** Diameter of the chosen bar. */
export const diameterStep: Step = when(isUs, {
  yes: [look('phi', usDiameter, diameter)],
  no: [look('phi', metricDiameter, diameter)],
})

/** Diameter and area of the chosen bar_size: a US bar has the nominal area of its table, a metric bar that of its circle. */
export const barSteps: readonly Step[] = [
  diameterStep,
  when(isUs, {
    yes: [look('A_phi', usArea, { row: 'bar_size', says: 'nominal area of one bar', symbol: 'A_phi', unit: barArea })],
    no: [step('A_phi', 'pi / 4 * phi^2', { says: 'area of one bar', symbol: 'A_phi', unit: barArea })],
  }),
]
