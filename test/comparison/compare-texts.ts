import { compareNotebooks } from '../../src/comparison/compare.ts'
import type { Comparison } from '../../src/comparison/types.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import { type RunText, runText } from '../evaluation/run-text.ts'

export interface Compared extends Comparison {
  readonly before: RunText
  readonly after: RunText
}

/** Two notebooks' bodies compared. */
export function compareTexts(old: string, now: string, threshold = 0.01): Compared {
  return compareRuns(runText(old), runText(now), threshold)
}

export function compareRuns(before: RunText, after: RunText, threshold = 0.01): Compared {
  const side = ({ plan, results, workings }: RunText) => ({ notebook: plan.notebook, results, workings })
  return { ...compareNotebooks(side(before), side(after), { modules: catalogue, threshold }), before, after }
}
