import { lstat } from 'node:fs/promises'
import { chooseCacheFolder } from './cache-folder.ts'
import { findBrowser } from './find-browser.ts'
import { writeFontConfig } from './font-config.ts'
import type { Part } from './open-parts.ts'
import { findChromiumPackage, unpackFonts } from './packed-chromium.ts'
import type { PrintEnvironment } from './print-environment.ts'
import { messageOf, type PrintFailure, printFailure, systemCode } from './print-failure.ts'
import { type PrintedPackage, type PrintOptions, printInTabs } from './print-in-tabs.ts'
import { makeSession, removeSession } from './session-folder.ts'
import { type StartedBrowser, startBrowser, stopped } from './start-browser.ts'

/** Which browser printed; a package's record names it, since another build makes other bytes. */
export interface BrowserIdentity {
  readonly name: string
  readonly version: string
  readonly pinned: boolean
  readonly sandboxed: boolean
}

/** A running browser for any number of prints, several at a time if wished. Close it. */
export interface OpenBrowser {
  readonly ok: true
  readonly browser: BrowserIdentity
  /** Returns the printed and checked package, or why there is none, from one document or from parts of it. Throws `RangeError` for a text without `html` or `body` element. */
  print(
    document: string | readonly Part[],
    options: PrintOptions,
  ): Promise<(PrintedPackage & { readonly browser: BrowserIdentity }) | PrintFailure>
  /** Ends the browser and removes its temporary files. May be called more than once. */
  close(): Promise<void>
}

/** Starts a browser to print with. Refuses, in words, where there is none or it does not start; nothing is left behind then. */
export async function openBrowser(environment: PrintEnvironment): Promise<OpenBrowser | PrintFailure> {
  if (environment.signal?.aborted) return stopped()
  const folder = await makeSession()
  if (typeof folder !== 'string') return folder
  let opened: OpenBrowser | PrintFailure | undefined
  try {
    opened = await startIn(folder, environment)
    return opened
  } finally {
    if (opened?.ok !== true) await removeSession(folder)
  }
}

async function startIn(folder: string, environment: PrintEnvironment): Promise<OpenBrowser | PrintFailure> {
  const { signal, variables } = environment
  const source = await findChromiumPackage()
  try {
    const place = { cache: await chooseCacheFolder(environment), signal }
    const found = await findBrowser(environment, { source, place })
    if (!found.ok) return found
    if (source === undefined) return noFont()
    const fontConfig = await writeFontConfig(folder, await unpackFonts(source, place))
    const root = (await lstat(folder)).uid === 0
    const started = await startBrowser(found, { folder, variables, fontConfig, root })
    if (!started.ok) return started
    if (!signal?.aborted) return handle(started, { folder, pinned: found.pinned, signal })
    await started.running.close()
    return stopped()
  } catch (thrown) {
    if (signal?.aborted) return stopped()
    if (systemCode(thrown) === undefined) throw thrown
    return printFailure(
      'print-failed',
      `the browser could not be made ready: ${messageOf(thrown)}`,
      'Look at the disk and its permissions',
    )
  }
}

function noFont(): PrintFailure {
  return printFailure(
    'no-font',
    'the package `@sparticuz/chromium`, which carries the fall-back font, is not installed',
    'Run `npm install` again without `--omit`',
  )
}

function handle(
  started: StartedBrowser,
  session: { folder: string; pinned: boolean; signal: AbortSignal | undefined },
): OpenBrowser {
  const [name = '', version = ''] = started.version.split('/')
  const browser = { name, version, pinned: session.pinned, sandboxed: started.sandboxed }
  const end = () => void started.running.process()?.kill('SIGKILL')
  session.signal?.addEventListener('abort', end, { once: true })
  return {
    ok: true,
    browser,
    print: async (document, options) => {
      const parts = typeof document === 'string' ? [document] : document
      const printed = await printInTabs(parts, { ...options, tabs: started.running, folder: session.folder })
      if (session.signal?.aborted) return stopped()
      return printed.ok ? { ...printed, browser } : printed
    },
    close: async () => {
      session.signal?.removeEventListener('abort', end)
      await started.running.close().catch(end)
      await removeSession(session.folder)
    },
  }
}
