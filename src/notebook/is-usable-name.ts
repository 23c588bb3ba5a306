import { nameFault } from '../formula/names.ts'
import { likelyFormulaName } from './name-forms.ts'
import { error, type Reading } from './reading.ts'
import type { Written } from './types.ts'

/** Reports a name that formulas could not use, and returns whether they can. */
export function isUsableName({ text, place }: Written, reading: Reading): boolean {
  const fault = nameFault(text)
  if (fault === undefined) return true
  const likely = likelyFormulaName(text)
  const help = likely === undefined ? fault.help : `Write \`${likely}\``
  const rule = fault.rule === 'name-is-unit' ? fault.rule : 'name-form'
  error(reading, rule, { place, says: fault.says, ...(help !== undefined && { help }) })
  return false
}
