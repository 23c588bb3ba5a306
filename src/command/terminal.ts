import picocolors from 'picocolors'
import type { Palette } from '../diagnostic/format-diagnostic.ts'

/** Where a command writes: the answer, and everything else. */
export interface Terminal {
  readonly answer: (text: string) => void
  readonly say: (text: string) => void
  readonly colour: Palette | undefined
  /** True where standard error is a terminal, so that progress may be shown. */
  readonly live: boolean
}

/** The terminal of this process. Colour only to a terminal, and not where NO_COLOR or TERM=dumb asks for none. */
export function terminalOf(process: NodeJS.Process): Terminal {
  const live = process.stderr.isTTY === true
  const coloured = live && !process.env.NO_COLOR && process.env.TERM !== 'dumb'
  const { bold, red, yellow, cyan, dim } = picocolors.createColors(true)
  const palette: Palette = {
    error: text => bold(red(text)),
    warning: text => bold(yellow(text)),
    place: cyan,
    says: bold,
    faint: dim,
  }
  return {
    answer: text => void process.stdout.write(text.endsWith('\n') ? text : `${text}\n`),
    say: text => void process.stderr.write(text.endsWith('\n') ? text : `${text}\n`),
    colour: coloured ? palette : undefined,
    live,
  }
}
