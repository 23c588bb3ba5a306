import { basename } from 'node:path'
import { shownWords } from '../evaluation/shown-words.ts'
import { digitsOf } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import type { Unit } from '../quantity/types.ts'
import type { Measure } from '../study/measure.ts'
import type { Evaluated } from './evaluated.ts'
import type { Surroundings } from './surroundings.ts'

/** What a study is asked about. */
export interface Asked {
  readonly evaluated: Evaluated
  readonly measures: readonly Measure[]
}

const figures = 4

/** An SI number in its unit to four figures; `refused` where there is none. */
export const valueWords = (si: number, unit: Unit): string =>
  Number.isFinite(si) ? shownWords({ digits: digitsOf(inUnit(si, unit), figures), unit, exact: false }) : 'refused'

/** The answer as JSON, under the head that every study has. */
export function answerData({ terminal, version }: Surroundings, { notebook }: Evaluated, data: object): void {
  const about = { format: 1, tool: `undercroft ${version}`, notebook: { path: basename(notebook.path) } }
  terminal.answer(JSON.stringify({ ...about, ...data }, null, 2))
}

/** A number that is absent where there is none: JSON has no NaN. */
export const known = <Key extends string>(key: Key, si: number): { readonly [K in Key]?: number } =>
  (Number.isFinite(si) ? { [key]: si } : {}) as { readonly [K in Key]?: number }
