import { constants } from 'node:fs'
import { access, readdir, stat } from 'node:fs/promises'
import { homedir, platform } from 'node:os'
import { delimiter, join } from 'node:path'
import type { PrintEnvironment } from './print-environment.ts'
import { systemCode } from './print-failure.ts'

type Variables = PrintEnvironment['variables']

const PATH_NAMES = [
  'google-chrome-stable',
  'google-chrome',
  'chromium',
  'chromium-browser',
  'chrome-headless-shell',
  'chromium-headless-shell',
]
const MAC_APPLICATIONS = ['Google Chrome.app/Contents/MacOS/Google Chrome', 'Chromium.app/Contents/MacOS/Chromium']
const WINDOWS_PROGRAM = join('Google', 'Chrome', 'Application', 'chrome.exe')

/** Returns whether a path is a file that this user may run. */
export async function isProgram(path: string): Promise<boolean> {
  try {
    await access(path, constants.X_OK)
    return (await stat(path)).isFile()
  } catch (thrown) {
    if (systemCode(thrown) === undefined) throw thrown
    return false
  }
}

/** Returns an installed Chrome or Chromium by its usual names, or undefined. Only the Linux names are tested. */
export function findInstalledBrowser(variables: Variables): Promise<string | undefined> {
  return firstProgram(usualPlaces(variables))
}

function usualPlaces(variables: Variables): string[] {
  if (platform() === 'win32') {
    return ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap(key => under(variables[key], WINDOWS_PROGRAM))
  }
  const folders = (variables.PATH ?? '').split(delimiter).filter(folder => folder !== '')
  const named = PATH_NAMES.flatMap(name => folders.map(folder => join(folder, name)))
  return platform() === 'darwin' ? [...MAC_APPLICATIONS.map(path => join('/Applications', path)), ...named] : named
}

function under(folder: string | undefined, path: string): string[] {
  return folder === undefined || folder === '' ? [] : [join(folder, path)]
}

async function firstProgram(paths: readonly string[]): Promise<string | undefined> {
  for (const path of paths) if (await isProgram(path)) return path
  return undefined
}

/** Where puppeteer's own installer puts each browser: kind, then platform and version, then a folder of its archive. */
const PUPPETEER_PROGRAMS = [
  ['chrome-headless-shell', 'chrome-headless-shell'],
  ['chrome-headless-shell', 'chrome-headless-shell.exe'],
  ['chrome', 'chrome'],
  ['chrome', 'chrome.exe'],
  ['chrome', 'Google Chrome for Testing.app/Contents/MacOS/Google Chrome for Testing'],
] as const

/** Returns the newest browser that puppeteer's own installer left in its cache, or undefined. Only the Linux layout is tested. */
export async function findPuppeteerBrowser(variables: Variables): Promise<string | undefined> {
  const cache = variables.PUPPETEER_CACHE_DIR || join(variables.HOME || homedir(), '.cache', 'puppeteer')
  for (const [kind, program] of PUPPETEER_PROGRAMS) {
    const builds = (await foldersIn(join(cache, kind))).sort(newestFirst)
    const archives = await Promise.all(builds.map(build => foldersIn(build)))
    const found = await firstProgram(archives.flat().map(folder => join(folder, program)))
    if (found !== undefined) return found
  }
  return undefined
}

function newestFirst(a: string, b: string): number {
  return b.localeCompare(a, 'en', { numeric: true })
}

async function foldersIn(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => [])
  return entries.filter(entry => entry.isDirectory()).map(entry => join(folder, entry.name))
}
