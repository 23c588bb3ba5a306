import { compareNotebooks } from '../comparison/compare.ts'
import { catalogue } from '../modules/catalogue.ts'
import { comparisonData } from './comparison-data.ts'
import { comparisonMarkdown } from './comparison-markdown.ts'
import { comparisonText } from './comparison-text.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { editionWords } from './package-editions.ts'
import { sidesOf } from './revised-sides.ts'
import { sayDiagnostics } from './say-diagnostics.ts'
import { errorWords } from './since-revision.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'

export interface CompareOptions {
  /** Percent, as typed. */
  readonly threshold: string
  readonly format: 'text' | 'markdown' | 'json'
}

/**
 * `compare OLD NEW`: what changed, what it moved, what needs checking again. The status is that of the new notebook, whatever moved: its
 * errors, or a check that is not satisfied.
 */
export async function compare(
  { terminal, version }: Surroundings,
  asked: { readonly old: string; readonly now: string },
  options: CompareOptions,
): Promise<ExitStatus> {
  const threshold = thresholdOf(options.threshold)
  terminal.doing(`reading ${asked.old} and ${asked.now}`)
  const { old, now } = await sidesOf(asked)
  terminal.doing('putting the changes in one at a time')
  const comparison = compareNotebooks(old.evaluated, now.evaluated, { modules: catalogue, threshold })
  for (const says of errorWords(old)) terminal.say(says)
  if (now.evaluated.status === exitStatus.notebook)
    sayDiagnostics(
      terminal,
      now.evaluated.notebook,
      now.evaluated.diagnostics.filter(({ severity }) => severity === 'error'),
    )
  const about = {
    title: now.evaluated.notebook.title.title,
    old: { label: old.label, revision: old.evaluated.notebook.title.revision },
    now: { label: now.label, revision: now.evaluated.notebook.title.revision },
    editions: old.issued ? editionWords(old.issued, old.evaluated, { path: old.label, version }) : [],
  }
  const form = { text: comparisonText, markdown: comparisonMarkdown, json: jsonText }[options.format]
  terminal.answer(form(comparison, about))
  return now.evaluated.status
}

const jsonText: typeof comparisonText = (comparison, about) =>
  JSON.stringify(comparisonData(comparison, about), null, 2)

function thresholdOf(percent: string): number {
  const value = Number(percent.replace(/\s*%$/, ''))
  if (percent.trim() === '' || !Number.isFinite(value) || value < 0)
    throw new Stopped(exitStatus.called, `\`--threshold\` is a number of percent from 0, not \`${percent}\``)
  return value / 100
}
