import type { InnerText } from './inner-text.ts'
import { limits } from './limits.ts'
import { readStatement } from './read-statement.ts'
import { error, type Reading } from './reading.ts'
import type { Statement, Written } from './types.ts'
import { type WorkLine, workLines } from './work-line.ts'

/** Returns the statements of a `work` block, one a line. Refuses a name given twice, and a line that is no statement. */
export function readWorking(inner: InnerText, reading: Reading): { statements: readonly Statement[]; whole: boolean } {
  const statements: Statement[] = []
  const names = new Map<string, Written>()
  let whole = true
  for (const line of statementLines(inner, reading)) {
    const statement = readStatement(line, reading)
    if (statement === undefined) whole = false
    else if (isNew(statement, names, reading)) statements.push(statement)
  }
  return { statements, whole }
}

function statementLines(inner: InnerText, reading: Reading): readonly WorkLine[] {
  const lines = workLines(inner)
  const place = lines[limits.statements]?.code.place
  if (place === undefined) return lines
  const says = `The block has ${lines.length} lines of working; the limit is ${limits.statements}`
  error(reading, 'file-too-large', { place, says, help: 'Divide it into several blocks' })
  return lines.slice(0, limits.statements)
}

function isNew(statement: Statement, names: Map<string, Written>, reading: Reading): boolean {
  if (statement.kind === 'check') return true
  const { text, place } = statement.name
  const first = names.get(text)
  if (first === undefined) {
    names.set(text, statement.name)
    return true
  }
  const notes = [{ says: 'It is first given here', place: first.place }]
  error(reading, 'name-duplicate', {
    place,
    says: `\`${text}\` is given twice in this block`,
    help: 'Give the second another name',
    notes,
  })
  return false
}
