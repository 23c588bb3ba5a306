import { execFile } from 'node:child_process'
import { platform } from 'node:os'
import type { FoundBrowser } from './find-browser.ts'
import { installHelp } from './find-browser.ts'
import { messageOf, type PrintFailure, printFailure } from './print-failure.ts'

interface Trial {
  readonly code: string | number | undefined
  readonly errors: string
}

/** Returns why a browser did not start, found by asking it for its version once more with its error output read. */
export async function diagnoseStart(
  browser: FoundBrowser,
  attempt: { environment: Readonly<Record<string, string | undefined>>; thrown: unknown },
): Promise<PrintFailure> {
  // Elsewhere `--version` opens a window and prints nothing.
  const trial = platform() === 'linux' ? await askVersion(browser.path, attempt.environment) : undefined
  return (trial && explain(browser, trial)) ?? generalFailure(browser, trial?.errors || messageOf(attempt.thrown))
}

function explain(browser: FoundBrowser, trial: Trial): PrintFailure | undefined {
  const library = /error while loading shared libraries: ([^:\s]+)/.exec(trial.errors)?.[1]
  if (library !== undefined) {
    const help = `Install the library, for example \`apt-get install libnss3 libexpat1\`; \`ldd ${browser.path}\` lists all that it wants`
    return printFailure('library-missing', `the browser \`${browser.path}\` needs \`${library}\``, help)
  }
  if (trial.code === 'ENOENT') {
    const says = `the browser \`${browser.path}\` is made for another system library than this machine's (glibc)`
    return printFailure('library-missing', says, `Name a browser of this system instead. ${installHelp()}`)
  }
  if (trial.code !== 'EACCES') return undefined
  const help = 'Its folder may forbid programs (a `noexec` mount); name another cache folder'
  return printFailure('no-browser', `the system does not let \`${browser.path}\` run`, help)
}

function generalFailure(browser: FoundBrowser, cause: string): PrintFailure {
  const words = cause.trim().split('\n').at(-1) ?? ''
  return printFailure(
    'print-failed',
    `the browser \`${browser.path}\` did not start: ${words}`,
    `Name another browser. ${installHelp()}`,
  )
}

function askVersion(path: string, environment: Readonly<Record<string, string | undefined>>): Promise<Trial> {
  return new Promise(resolve => {
    execFile(path, ['--version'], { env: { ...environment }, timeout: 10_000 }, (thrown, _output, errors) => {
      resolve({ code: thrown?.code ?? undefined, errors })
    })
  })
}
