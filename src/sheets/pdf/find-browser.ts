import { platform } from 'node:os'
import { findInstalledBrowser, findPuppeteerBrowser, isProgram } from './installed-browsers.ts'
import { type ChromiumPackage, packedChromiumRuns, type UnpackingPlace, unpackChromium } from './packed-chromium.ts'
import type { PrintEnvironment } from './print-environment.ts'
import { messageOf, type PrintFailure, printFailure, systemCode } from './print-failure.ts'

/** A browser to print with, before it is started. */
export interface FoundBrowser {
  readonly ok: true
  readonly path: string
  /** Whether it is the packed build, which alone makes the same bytes on every machine. */
  readonly pinned: boolean
  /** Folder of libraries the browser needs from us. */
  readonly libraries?: string
}

/** Returns the browser to print with: the one named, else the packed one, else puppeteer's, else an installed one; else what to do. */
export async function findBrowser(
  environment: PrintEnvironment,
  supply: { source: ChromiumPackage | undefined; place: UnpackingPlace },
): Promise<FoundBrowser | PrintFailure> {
  const { browser: named, variables } = environment
  if (named !== undefined) return (await isProgram(named)) ? plain(named) : noSuchBrowser(named)
  if (supply.source !== undefined && packedChromiumRuns()) return packed(supply.source, supply.place)
  const other = (await findPuppeteerBrowser(variables)) ?? (await findInstalledBrowser(variables))
  return other === undefined
    ? printFailure('no-browser', 'no browser was found to print with', installHelp())
    : plain(other)
}

function plain(path: string): FoundBrowser {
  return { ok: true, path, pinned: false }
}

function noSuchBrowser(named: string): PrintFailure {
  const help = `Name the program file of a Chrome or Chromium, or name none and let one be found\n${installHelp()}`
  return printFailure('no-browser', `\`${named}\` is not a program that can be run`, help)
}

async function packed(source: ChromiumPackage, place: UnpackingPlace): Promise<FoundBrowser | PrintFailure> {
  try {
    return { ok: true, pinned: true, ...(await unpackChromium(source, place)) }
  } catch (thrown) {
    if (systemCode(thrown) === undefined || place.signal?.aborted) throw thrown
    const says = `the packed browser could not be unpacked into \`${place.cache}\`: ${messageOf(thrown)}`
    return printFailure(
      'no-browser',
      says,
      'It takes 200 MB of disk; name another cache folder, or name an installed browser',
    )
  }
}

/** Returns the commands that bring a browser to this platform. */
export function installHelp(system: NodeJS.Platform = platform()): string {
  const shell = 'npx @puppeteer/browsers install chrome-headless-shell@stable --path'
  if (system === 'win32') return `Install Google Chrome, or run \`${shell} %USERPROFILE%\\.cache\\puppeteer\``
  if (system === 'darwin') return `Install Google Chrome, or run \`${shell} ~/.cache/puppeteer\``
  return `Run \`npm install\` again without \`--omit\`; or \`apt-get install chromium\`; or \`${shell} ~/.cache/puppeteer\``
}
