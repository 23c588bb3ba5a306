import { stat } from 'node:fs/promises'
import { basename, dirname, resolve } from 'node:path'
import { GitRefusal } from '../comparison/git.ts'
import { commitOf, type FileAt, fileAt, forkOf, rangeOf } from '../comparison/git-file.ts'
import { printable } from '../diagnostic/printable.ts'
import { type Evaluated, evaluateBytes, evaluateFile } from './evaluated.ts'
import { exitStatus } from './exit-status.ts'
import { Stopped } from './stopped.ts'

/** One side of a comparison with what it is called. */
export interface Side {
  readonly label: string
  readonly evaluated: Evaluated
}

interface Sides {
  readonly old: Side
  readonly now: Side
}

/** Reads both sides: two files, a revision and the file as it is now, or two revisions `A..B`. What is a file is read as a file. */
export async function sidesOf({ old, now }: { readonly old: string; readonly now: string }): Promise<Sides> {
  if (old === '-' && now === '-') throw new Stopped(exitStatus.called, 'Standard input can be read once: give `-` once')
  if (old === '-' || (await isFile(old))) return { old: await fileSide(old), now: await fileSide(now) }
  if (looksLikePath(old))
    throw new Stopped(exitStatus.called, `${printable(old)} cannot be read: there is no such file or folder`)
  if (now === '-') throw new Stopped(exitStatus.called, 'A revision of standard input cannot be found: name the file')
  return revised(old, now).catch((thrown: unknown) => {
    if (thrown instanceof GitRefusal) throw new Stopped(exitStatus.called, thrown.message, thrown.help)
    throw thrown
  })
}

/** The older side alone, for a package set against it: a file, or the notebook as it was at a revision. It is called without folders. */
export async function oldSide(old: string, path: string): Promise<Side> {
  const { old: side } = await sidesOf({ old, now: path })
  return { ...side, label: (await isFile(old)) ? basename(old) : side.label.replace(/^.* at /, '') }
}

const isFile = (path: string): Promise<boolean> =>
  stat(path).then(
    found => !found.isDirectory(),
    () => false,
  )

/** A name of a Markdown file is never meant as a revision. */
const looksLikePath = (text: string): boolean => /\.(?:md|markdown)$/i.test(text)

const named = (path: string): string => (path === '-' ? 'standard input' : path)

async function fileSide(path: string): Promise<Side> {
  return { label: named(path), evaluated: await evaluateFile(path) }
}

async function revised(revision: string, path: string): Promise<Sides> {
  const range = rangeOf(revision)
  const whole = resolve(path)
  const file: FileAt = { folder: dirname(whole), name: basename(whole), shown: path }
  if (!(await stat(file.folder).catch(() => undefined)))
    throw new Stopped(exitStatus.called, `${printable(path)} cannot be read: there is no such file or folder`)
  if (!range) {
    const commit = await commitOf(file.folder, revision)
    return { old: await sideAt(file, { commit, revision }), now: await nowSide(path) }
  }
  const to = await commitOf(file.folder, range.to)
  const from = range.fork ? await forkOf(file.folder, range) : await commitOf(file.folder, range.from)
  const words = range.fork ? `${range.from}...` : range.from
  return {
    old: await sideAt(file, { commit: from, revision: words, until: to }),
    now: await sideAt(file, { commit: to, revision: range.to }),
  }
}

async function nowSide(path: string): Promise<Side> {
  const side = await fileSide(path)
  return { ...side, label: `${side.label} as it is now` }
}

async function sideAt(
  file: FileAt,
  at: { readonly commit: string; readonly revision: string; readonly until?: string },
): Promise<Side> {
  const found = await fileAt(file, at.commit, at.until)
  const path = found.renamed ? found.path : file.shown
  const label = `${path} at ${at.revision} (${at.commit.slice(0, 10)})`
  return { label, evaluated: evaluateBytes(found.bytes, `${path}@${at.revision}`) }
}
