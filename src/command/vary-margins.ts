import { printable } from '../diagnostic/printable.ts'
import { findMargins } from '../study/margins.ts'
import { showMargins } from '../study/shown-margins.ts'
import type { Evaluated } from './evaluated.ts'
import { marginsData } from './margins-data.ts'
import { marginsText } from './margins-text.ts'
import type { Surroundings } from './surroundings.ts'
import { answerData } from './vary-answer.ts'
import type { VaryOptions } from './vary-options.ts'

/** The margin of every assumption, tightest first. */
export function varyMargins(around: Surroundings, evaluated: Evaluated, { format }: VaryOptions): void {
  const { terminal } = around
  const { results, notebook } = evaluated
  const found = findMargins(results.plan, ({ entity }) => terminal.doing(`searching the margin of ${entity.key}`))
  const shown = showMargins(found, results)
  if (format === 'json') answerData(around, evaluated, marginsData(shown))
  else
    terminal.answer(marginsText(shown, { path: printable(notebook.path), canTurn: results.plan.trail.some(isCheck) }))
}

const isCheck = ({ kind }: { readonly kind: string }): boolean => kind === 'check'
