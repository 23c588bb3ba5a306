import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { homedir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import type { PageNumbers } from '../sheets/pdf/index.ts'
import { sha256 } from './sha256.ts'

/** Where the page numbers of a notebook's last print are kept: a right guess saves a print, a wrong one does no harm. */
function guessPath(notebook: string, variables: Readonly<Record<string, string | undefined>>): string {
  const cache = variables.XDG_CACHE_HOME ?? join(homedir(), '.cache')
  return join(cache, 'undercroft', 'pages', `${sha256(Buffer.from(resolve(notebook))).slice(0, 24)}.json`)
}

/** The last print's page numbers; nothing where they are not to be had. */
export async function readGuess(
  notebook: string,
  variables: Readonly<Record<string, string | undefined>>,
): Promise<PageNumbers | undefined> {
  try {
    const guess = JSON.parse(await readFile(guessPath(notebook, variables), 'utf8')) as PageNumbers
    return Number.isInteger(guess.pages) && typeof guess.pageOf === 'object' ? guess : undefined
  } catch {
    return undefined
  }
}

/** Keeps page numbers for the next print. A cache that cannot be written is no fault. */
export async function keepGuess(
  notebook: string,
  variables: Readonly<Record<string, string | undefined>>,
  numbers: PageNumbers,
): Promise<void> {
  const path = guessPath(notebook, variables)
  try {
    await mkdir(dirname(path), { recursive: true })
    await writeFile(path, JSON.stringify({ pages: numbers.pages, pageOf: numbers.pageOf }))
  } catch {
    // The next print guesses nothing.
  }
}
