import { execFile } from 'node:child_process'
import { platform } from 'node:os'
import { type FoundBrowser, installHelp } from './find-browser.ts'
import { type PrintFailure, printFailure } from './print-failure.ts'

interface Trial {
  readonly code: string | number | undefined
  readonly errors: string
}

/**
 * Asks a browser for its version, and returns why it cannot run, or undefined where it can. Asked before the start, since a program that the system
 * refuses to start would end this process there. Only on Linux: elsewhere the question opens a window.
 */
export async function tryProgram(
  browser: FoundBrowser,
  environment: Readonly<Record<string, string | undefined>>,
): Promise<PrintFailure | undefined> {
  if (platform() !== 'linux') return undefined
  const trial = await askVersion(browser.path, environment)
  return trial.code === undefined ? undefined : explain(browser, trial)
}

function askVersion(path: string, environment: Readonly<Record<string, string | undefined>>): Promise<Trial> {
  return new Promise(resolve => {
    execFile(path, ['--version'], { env: { ...environment }, timeout: 30_000 }, (thrown, _output, errors) => {
      resolve({ code: thrown === null ? undefined : (thrown.code ?? 'stopped'), errors })
    })
  })
}

function explain(browser: FoundBrowser, trial: Trial): PrintFailure {
  const library = /error while loading shared libraries: ([^:\s]+)/.exec(trial.errors)?.[1]
  if (library !== undefined) {
    const help = `Install the library, for example \`apt-get install libnss3 libexpat1\`; \`ldd ${browser.path}\` lists all that it wants`
    return printFailure('library-missing', `the browser \`${browser.path}\` needs \`${library}\``, help)
  }
  if (trial.code === 'ENOENT') {
    const says = `the browser \`${browser.path}\` is made for another system library than this machine's (glibc)`
    return printFailure('library-missing', says, `Name a browser of this system instead. ${installHelp()}`)
  }
  if (trial.code === 'EACCES') {
    const help = 'Its folder may forbid programs (a `noexec` mount); name another cache folder'
    return printFailure('no-browser', `the system does not let \`${browser.path}\` run`, help)
  }
  return startFailure(browser, trial.errors.trim().split('\n').at(-1) || `it ended with ${trial.code}`)
}

/** Returns the refusal for a browser that runs and does not start, with its own words. */
export function startFailure(browser: FoundBrowser, words: string): PrintFailure {
  return printFailure(
    'print-failed',
    `the browser \`${browser.path}\` did not start: ${words}`,
    `Name another browser. ${installHelp()}`,
  )
}
