import type { Diagnostic } from '../diagnostic.ts'
import { formatDiagnostic } from '../format-diagnostic.ts'
import { type Rule, rules } from '../rules.ts'
import { messages } from './messages.ts'

/** What reading or evaluating an example gave, with the text it was read as. */
export interface Said {
  readonly text: string
  readonly diagnostics: readonly Diagnostic[]
}

const path = 'notebook.md'

/** Returns the page of a rule as Markdown. `said` is what its example gives; without it the page shows the example alone. */
export function messagePage(rule: Rule, said: Said | undefined): string {
  const { means, instead, example, noExample = '', saved } = messages[rule]
  const shown = said?.diagnostics.filter(diagnostic => diagnostic.rule === rule) ?? []
  const heard = shown.map(diagnostic => formatDiagnostic(diagnostic, { path, text: said?.text ?? '' })).join('\n\n')
  const parts = [
    `# ${rule}`,
    means,
    '## Example',
    ...(example === undefined
      ? [noExample]
      : [...(saved === undefined ? [] : [`Saved as ${saved}:`]), fenced('markdown', example)]),
    ...(heard === '' ? [] : ['says', fenced('text', heard)]),
    '## What to write instead',
    instead,
  ]
  return `${parts.join('\n\n')}\n`
}

const fenced = (language: string, text: string): string => `\`\`\`\`\`${language}\n${text.trimEnd()}\n\`\`\`\`\``

/** Returns the page that lists all rules. */
export function messageIndex(): string {
  const rows = Object.entries(rules).map(
    ([rule, says]) => `| [\`${rule}\`](${rule}.md) | ${says.replaceAll('|', '\\|')} |`,
  )
  const head =
    'Each message of `undercroft check` ends its first line with a rule name. These are all there are; a name is never used again for something else.'
  return `${['# Messages', head, ['| rule | means |', '| --- | --- |', ...rows].join('\n')].join('\n\n')}\n`
}
