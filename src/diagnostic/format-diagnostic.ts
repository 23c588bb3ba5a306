import { codeFrame } from './code-frame.ts'
import type { Diagnostic, Note, Place } from './diagnostic.ts'
import { printable } from './printable.ts'

/** Functions that colour a piece of text. Each must return the text itself with marks round it. */
export interface Palette {
  readonly error: (text: string) => string
  readonly warning: (text: string) => string
  readonly place: (text: string) => string
  readonly says: (text: string) => string
  readonly faint: (text: string) => string
}

export interface FormatOptions {
  readonly path: string
  /** The author's file, to print the line in question from. */
  readonly text: string
  /** Without it the text is plain. */
  readonly colour?: Palette
}

const same = (text: string): string => text
const plain: Palette = { error: same, warning: same, place: same, says: same, faint: same }

/**
 * Returns a diagnostic as lines of text without a final line end: place, severity and rule; the sentence; the author's line
 * with carets under the exact text; then the notes, the help and how many values it stopped.
 */
export function formatDiagnostic(diagnostic: Diagnostic, options: FormatOptions): string {
  const { severity, rule, place, says, help, notes = [], stops = 0 } = diagnostic
  const colour = options.colour ?? plain
  const mark = colour[severity]
  const lines = [
    `${colour.place(at(options.path, place))}  ${mark(severity)}  ${colour.faint(rule)}`,
    colour.says(printable(says)),
    ...frameLines(place, mark, options),
    ...notes.flatMap(note => noteLines(note, options)),
  ]
  if (help !== undefined) lines.push(`  help: ${printable(help)}`)
  if (stops > 0) lines.push(`  ${stops} ${stops === 1 ? 'value' : 'values'} could not be evaluated because of this`)
  return lines.join('\n')
}

const at = (path: string, place: Place): string => `${printable(path)}:${place.line}:${place.column}`

function noteLines(note: Note, options: FormatOptions): string[] {
  const { faint } = options.colour ?? plain
  if (note.place === undefined) return [`  note: ${printable(note.says)}`]
  return [
    `  note: ${printable(note.says)} (${at(options.path, note.place)})`,
    ...frameLines(note.place, faint, options),
  ]
}

function frameLines(place: Place, mark: (text: string) => string, options: FormatOptions): string[] {
  const { faint } = options.colour ?? plain
  const frame = codeFrame(options.text, place)
  const number = String(place.line).padStart(6)
  return [
    `${faint(`${number} |`)} ${frame.line}`.trimEnd(),
    `${faint(`${' '.repeat(number.length)} |`)} ${' '.repeat(frame.indent)}${mark('^'.repeat(frame.carets))}`,
  ]
}
