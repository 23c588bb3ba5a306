import { checkNesting } from './check-nesting.ts'
import { checkRuns } from './check-runs.ts'
import { limits } from './limits.ts'
import { placeOf } from './lines.ts'
import { error, type Reading } from './reading.ts'

/**
 * Reports what would make the text too costly to parse: its size, a paragraph too long, nesting too deep; or a NUL, which no
 * text has. Takes time in proportion to the text and leaves the rest unread where the size alone is too much.
 */
export function checkText(reading: Reading): void {
  const { lines } = reading
  const bytes = lines.text.length > limits.fileBytes ? lines.text.length : new TextEncoder().encode(lines.text).length
  if (bytes > limits.fileBytes) {
    const says = `The file has ${megabytes(bytes)} MB; the limit is ${megabytes(limits.fileBytes)} MB`
    error(reading, 'file-too-large', { place: placeOf(lines, 0), says, help: 'Divide it into several notebooks' })
    return
  }
  const nul = lines.text.indexOf('\0')
  if (nul >= 0) {
    const help = 'Save the file as UTF-8 text'
    error(reading, 'file-not-utf8', {
      place: placeOf(lines, nul, nul + 1),
      says: 'The file holds a NUL, which no text has',
      help,
    })
    return
  }
  checkRuns(reading)
  checkNesting(reading)
}

const megabytes = (bytes: number): string => (Math.ceil(bytes / 1e4) / 100).toFixed(2)
