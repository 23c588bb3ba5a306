import { limits } from './limits.ts'
import { lineBounds, placeOf } from './lines.ts'
import { error, type Reading } from './reading.ts'

/**
 * Reports lines without a blank one among them that run on past the limit: the time to read one paragraph can grow with the
 * square of its length. What looks like a fence has a limit of its own, because only a full reading can tell that it is one.
 */
export function checkRuns(reading: Reading): void {
  const { lines } = reading
  let run: Run = { start: 0, fenced: false }
  let fence = ''
  for (const index of lines.starts.keys()) {
    const { start, end } = lineBounds(lines, index)
    const line = lines.text.slice(start, Math.min(end, start + 1000))
    const opens = /^ {0,3}(`{3,}(?=[^`]*$)|~{3,})/.exec(line)?.[1] ?? ''
    const turns = fence === '' ? opens !== '' : opens.startsWith(fence) && line.trim() === opens
    if (turns) fence = fence === '' ? opens : ''
    if (turns || /^[ \t>]*$/.test(line)) run = { start: lines.starts[index + 1] ?? end, fenced: fence !== '' }
    else if (end - run.start > limitOf(run)) {
      reportRun(run, reading)
      return
    }
  }
}

interface Run {
  readonly start: number
  readonly fenced: boolean
}

const limitOf = ({ fenced }: Run): number => (fenced ? limits.fence : limits.paragraph)

function reportRun(run: Run, reading: Reading): void {
  const { lines } = reading
  const text = lines.text.slice(run.start)
  const start = run.start + text.length - text.trimStart().length
  const says = `More than ${limitOf(run)} characters stand here without a blank line, which is the limit`
  const help = run.fenced ? 'Divide the fence' : 'Divide the paragraph'
  error(reading, 'file-too-large', { place: placeOf(lines, start, start + 1), says, help })
}
