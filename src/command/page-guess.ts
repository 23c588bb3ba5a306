import { readFile, writeFile } from 'node:fs/promises'
import { dirname, join, resolve } from 'node:path'
import { usersCacheFolder } from '../sheets/pdf/cache-folder.ts'
import type { PageNumbers } from '../sheets/pdf/index.ts'
import { makeFolder } from '../sheets/pdf/make-folder.ts'
import { sha256 } from './sha256.ts'

type Variables = Readonly<Record<string, string | undefined>>

/** Where the page numbers of a notebook's last print are kept: a right guess saves a print, a wrong one does no harm. */
const guessPath = (notebook: string, variables: Variables): string =>
  join(usersCacheFolder(variables), 'pages', `${sha256(Buffer.from(resolve(notebook))).slice(0, 24)}.json`)

/** The last print's page numbers; nothing where they are not to be had. */
export async function readGuess(notebook: string, variables: Variables): Promise<PageNumbers | undefined> {
  try {
    const guess: unknown = JSON.parse(await readFile(guessPath(notebook, variables), 'utf8'))
    return isPageNumbers(guess) ? guess : undefined
  } catch {
    return undefined
  }
}

function isPageNumbers(guess: unknown): guess is PageNumbers {
  const { pages, pageOf, before } = Object(guess) as Readonly<Record<string, unknown>>
  if (typeof pageOf !== 'object' || pageOf === null || !Array.isArray(before)) return false
  return [pages, ...before, ...Object.values(pageOf)].every(page => Number.isInteger(page))
}

/** Keeps page numbers for the next print. A cache that cannot be written is no fault. */
export async function keepGuess(notebook: string, variables: Variables, numbers: PageNumbers): Promise<void> {
  const { pages, pageOf, before } = numbers
  const path = guessPath(notebook, variables)
  try {
    await makeFolder(dirname(path))
    await writeFile(path, JSON.stringify({ pages, pageOf, before }))
  } catch {
    // The next print guesses nothing.
  }
}
