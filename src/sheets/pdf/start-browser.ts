import { platform } from 'node:os'
import { join } from 'node:path'
import { type Browser, launch } from 'puppeteer-core'
import type { FoundBrowser } from './find-browser.ts'
import { messageOf, type PrintFailure, printFailure } from './print-failure.ts'
import { startFailure, tryProgram } from './try-program.ts'

/** What a start needs besides the browser. */
export interface StartOptions {
  /** The session's own folder: profile and temporary files go there. */
  readonly folder: string
  readonly variables: Readonly<Record<string, string | undefined>>
  readonly fontConfig: string
  /** Whether the user is root, for whom the browser has no sandbox. */
  readonly root: boolean
}

/** A running browser and whether its own sandbox holds it. */
export interface StartedBrowser {
  readonly ok: true
  readonly running: Browser
  /** As the browser gives it: `HeadlessChrome/147.0.7727.0`. */
  readonly version: string
  readonly sandboxed: boolean
}

/** The name mapping keeps the browser from any network, even where a page asks for a connection and no request. */
const FLAGS = [
  '--disable-gpu',
  '--font-render-hinting=none',
  '--disable-background-networking',
  '--host-resolver-rules=MAP * ~NOTFOUND',
  '--no-first-run',
]

/** A long package takes minutes to print; the caller's signal stops what takes too long. */
const LONGEST_ANSWER = 30 * 60 * 1000

/**
 * Starts the browser, in its sandbox where that can be. Many systems give it none (no user namespaces); it only ever prints our own file, with scripts
 * off, so it is then started without. Refuses in words where it does not start at all.
 */
export async function startBrowser(
  browser: FoundBrowser,
  options: StartOptions,
): Promise<StartedBrowser | PrintFailure> {
  const environment = environmentOf(browser, options)
  const refusal = await tryProgram(browser, environment)
  if (refusal) return refusal
  let words = ''
  for (const sandboxed of sandboxesToTry(options.root)) {
    try {
      const running = await launch(launchOptions(browser, { sandboxed, environment, folder: options.folder }))
      return { ok: true, sandboxed, running, version: await running.version() }
    } catch (thrown) {
      words = messageOf(thrown)
    }
  }
  return startFailure(browser, words)
}

/** Returns the refusal for work that the caller's signal ended. */
export function stopped(): PrintFailure {
  return printFailure('print-failed', 'the printing was stopped', 'Start it again; nothing was written')
}

function sandboxesToTry(root: boolean): readonly boolean[] {
  if (platform() !== 'linux') return [true]
  return root ? [false] : [true, false]
}

function launchOptions(
  browser: FoundBrowser,
  attempt: { sandboxed: boolean; environment: Record<string, string | undefined>; folder: string },
): Parameters<typeof launch>[0] {
  return {
    executablePath: browser.path,
    headless: 'shell',
    // No port that other users of the machine could reach. Elsewhere a port, since only with one does the library report a failed start.
    pipe: platform() === 'linux',
    args: attempt.sandboxed ? FLAGS : [...FLAGS, '--no-sandbox'],
    env: attempt.environment,
    userDataDir: join(attempt.folder, attempt.sandboxed ? 'profile-in-sandbox' : 'profile'),
    protocolTimeout: LONGEST_ANSWER,
    handleSIGINT: false,
    handleSIGTERM: false,
    handleSIGHUP: false,
  }
}

/** The same language, time zone and fonts everywhere: all three can reach the page. */
function environmentOf(browser: FoundBrowser, options: StartOptions): Record<string, string | undefined> {
  const fixed = { LANG: 'C.UTF-8', LC_ALL: 'C.UTF-8', LANGUAGE: 'en', TZ: 'UTC', FONTCONFIG_FILE: options.fontConfig }
  const libraries = [browser.libraries, options.variables.LD_LIBRARY_PATH].filter(Boolean).join(':')
  return {
    ...options.variables,
    ...fixed,
    TMPDIR: options.folder,
    ...(libraries === '' ? {} : { LD_LIBRARY_PATH: libraries }),
  }
}
