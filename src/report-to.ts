import type { VFile } from 'vfile'
import type { Diagnostic } from './diagnostic/diagnostic.ts'

/** Makes each diagnostic a message of the file: errors are `fatal: true`, as vfile calls them, and nothing is thrown. */
export function reportTo(file: VFile, diagnostics: readonly Diagnostic[]): void {
  for (const { rule, severity, place, says, help } of diagnostics) {
    const { line, column, offset, end } = place
    const point = { line, column, offset }
    const message = file.message(says, {
      place: { start: point, end: { line, column: column + end - offset, offset: end } },
      ruleId: rule,
      source: 'undercroft',
    })
    message.fatal = severity === 'error'
    if (help) message.note = help
  }
}
