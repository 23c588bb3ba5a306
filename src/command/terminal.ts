import picocolors from 'picocolors'
import type { Palette } from '../diagnostic/format-diagnostic.ts'
import { type Doing, progressLine } from './progress-line.ts'

/** Where a command writes: the answer, and everything else. */
export interface Terminal {
  readonly answer: (text: string) => void
  /** The answer as it is, without a line ending of ours. */
  readonly exactly: (text: string) => void
  readonly say: (text: string) => void
  /** Says what is being done, where that takes over a second and somebody watches. */
  readonly doing: Doing
  /** Nothing more is being done. */
  readonly done: () => void
  readonly colour: Palette | undefined
}

/** What this process prints to, and what to do where the answer cannot be printed (a full disk). */
export interface Streams {
  readonly stdout: NodeJS.WriteStream
  readonly stderr: NodeJS.WriteStream
  readonly lost: (thrown: Error) => void
}

type Variables = Readonly<Record<string, string | undefined>>

/** Returns the terminal of a process. A reader that goes away (`| head`) ends the printing and nothing else. */
export function terminalOf({ stdout, stderr, lost }: Streams, variables: Variables): Terminal {
  const live = stderr.isTTY === true
  const print = printer(stdout, lost)
  const say = printer(stderr, () => undefined)
  const { doing, done } = live ? progressLine(say) : { doing: () => undefined, done: () => undefined }
  const after =
    (write: (text: string) => void) =>
    (text: string): void => {
      done()
      write(text.endsWith('\n') ? text : `${text}\n`)
    }
  return {
    answer: after(print),
    exactly: text => {
      done()
      print(text)
    },
    say: after(say),
    doing,
    done,
    colour: wantsColour(live, variables) ? palette() : undefined,
  }
}

function printer(stream: NodeJS.WriteStream, lost: (thrown: Error) => void): (text: string) => void {
  let open = true
  stream.on('error', (thrown: NodeJS.ErrnoException) => {
    if (open && thrown.code !== 'EPIPE') lost(thrown)
    open = false
  })
  return text => {
    if (open) stream.write(text)
  }
}

/** Colour goes to a terminal only, unless FORCE_COLOR asks for it; NO_COLOR and TERM=dumb ask for none. */
function wantsColour(live: boolean, { NO_COLOR, FORCE_COLOR, TERM }: Variables): boolean {
  if (NO_COLOR) return false
  return FORCE_COLOR ? FORCE_COLOR !== '0' : live && TERM !== 'dumb'
}

function palette(): Palette {
  const { bold, red, yellow, cyan, dim } = picocolors.createColors(true)
  return {
    error: text => bold(red(text)),
    warning: text => bold(yellow(text)),
    place: cyan,
    says: bold,
    faint: dim,
  }
}
