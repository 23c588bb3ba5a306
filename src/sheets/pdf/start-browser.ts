import { platform } from 'node:os'
import { join } from 'node:path'
import { type Browser, launch } from 'puppeteer-core'
import { diagnoseStart } from './diagnose-start.ts'
import type { FoundBrowser } from './find-browser.ts'
import { type PrintFailure, printFailure } from './print-failure.ts'

/** What a start needs besides the browser. */
export interface StartOptions {
  /** The session's own folder: profile and temporary files go there. */
  readonly folder: string
  readonly variables: Readonly<Record<string, string | undefined>>
  readonly fontConfig: string
  /** Whether the user is root, for whom the browser has no sandbox. */
  readonly root: boolean
  readonly signal: AbortSignal | undefined
}

/** A running browser and whether its own sandbox holds it. */
export interface StartedBrowser {
  readonly ok: true
  readonly process: Browser
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
  let thrown: unknown
  for (const sandboxed of sandboxesToTry(options.root)) {
    try {
      return { ok: true, sandboxed, process: await launch(launchOptions(browser, { sandboxed, environment, options })) }
    } catch (failed) {
      thrown = failed
    }
    if (options.signal?.aborted) return stopped()
  }
  return diagnoseStart(browser, { environment, thrown })
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
  attempt: { sandboxed: boolean; environment: Record<string, string | undefined>; options: StartOptions },
): Parameters<typeof launch>[0] {
  const { options } = attempt
  return {
    executablePath: browser.path,
    headless: 'shell',
    pipe: true,
    args: attempt.sandboxed ? FLAGS : [...FLAGS, '--no-sandbox'],
    env: attempt.environment,
    userDataDir: join(options.folder, 'profile'),
    protocolTimeout: LONGEST_ANSWER,
    handleSIGINT: false,
    handleSIGTERM: false,
    handleSIGHUP: false,
    ...(options.signal === undefined ? {} : { signal: options.signal }),
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
