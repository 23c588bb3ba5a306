import { realpath, stat } from 'node:fs/promises'
import { basename, dirname, resolve } from 'node:path'
import { GitRefusal } from '../comparison/git.ts'
import { commitOf, type FileAt, fileAt, forkOf, type Range, rangeOf } from '../comparison/git-file.ts'
import { printable } from '../diagnostic/printable.ts'
import { evaluateBytes, evaluateFile } from './evaluated.ts'
import { exitStatus } from './exit-status.ts'
import { oldFile } from './old-file.ts'
import type { Side } from './side.ts'
import { Stopped } from './stopped.ts'

interface Sides {
  readonly old: Side
  readonly now: Side
}

/** Reads both sides: two files, a revision and the file as it is now, or two revisions `A..B`. What is a file is read as a file. */
export async function sidesOf({ old, now }: { readonly old: string; readonly now: string }): Promise<Sides> {
  if (old === '-' && now === '-') throw called('Standard input can be read once: give `-` once')
  if (old === '-') return { old: await fileSide(old), now: await fileSide(now) }
  if (await isFile(old)) return { old: await oldFile(old), now: await fileSide(now) }
  refuseUnread(old)
  if (now === '-') throw called('A revision of standard input cannot be found: name the file')
  const range = rangeOf(old)
  if (!range) {
    const side = await nowSide(now)
    return { old: await revised(old, now), now: side }
  }
  return { old: await revised(old, now), now: await revised(range.to, now) }
}

/** The older side alone, for a package of the notebook as it is now, set against it. It is called without folders. */
export async function oldSide(old: string, path: string): Promise<Side> {
  if (old !== '-' && (await isFile(old))) {
    const side = await oldFile(old)
    return { ...side, label: basename(side.label) }
  }
  refuseUnread(old)
  if (path === '-' || old === '-') throw called('A revision of standard input cannot be found: name the file')
  const end = /\.\.\.?([^.].*)$/.exec(old)?.[1]
  if (end !== undefined)
    throw called(
      `\`--since\` takes one revision, and \`${printable(old)}\` is two: the package is of the notebook as it is now`,
      `Write \`--since ${old.replace(/\.\..*$/, '') || 'HEAD'}\`; \`undercroft compare ${old} ${path}\` compares the two`,
    )
  const { short, evaluated } = await revised(old, path)
  return { label: short, evaluated }
}

const isFile = (path: string): Promise<boolean> =>
  stat(path).then(
    found => !found.isDirectory(),
    () => false,
  )

/** A name of a Markdown file or of a package is never meant as a revision. */
function refuseUnread(path: string): void {
  if (/\.(?:md|markdown|pdf|html)$/i.test(path))
    throw called(`\`${printable(path)}\` cannot be read: there is no such file or folder`)
}

const fileSide = async (path: string): Promise<Side> => ({
  label: path === '-' ? 'standard input' : path,
  evaluated: await evaluateFile(path),
})

async function nowSide(path: string): Promise<Side> {
  const side = await fileSide(path)
  return { ...side, label: `${side.label} as it is now` }
}

interface Revised extends Side {
  /** The revision alone: `v1 (032a498dc1)`. */
  readonly short: string
}

/** The notebook as it was at a revision, or at the older end of a range: under its name, or under that of the file its name leads to now. */
async function revised(revision: string, path: string): Promise<Revised> {
  const typed = resolve(path)
  const whole = await realpath(typed).catch(() => typed)
  try {
    return await revisedAt(typed, revision, path).catch((thrown: unknown) => {
      if (whole === typed || !(thrown instanceof GitRefusal)) throw thrown
      return revisedAt(whole, revision, path)
    })
  } catch (thrown) {
    if (thrown instanceof GitRefusal) throw called(thrown.message, thrown.help)
    throw thrown
  }
}

async function revisedAt(whole: string, revision: string, shown: string): Promise<Revised> {
  const file: FileAt = { folder: dirname(whole), name: basename(whole), shown }
  if (!(await stat(file.folder).catch(() => undefined)))
    throw called(`\`${printable(shown)}\` cannot be read: there is no such file or folder`)
  return sideAt(file, revision)
}

async function sideAt(file: FileAt, revision: string): Promise<Revised> {
  const range = rangeOf(revision)
  const commit = range ? await fromOf(file, range) : await commitOf(file.folder, revision)
  const until = range && (await commitOf(file.folder, range.to))
  const found = await fileAt(file, commit, until)
  const path = found.renamed ? found.path : file.shown
  const words = range ? `${range.from}${range.fork ? '...' : ''}` : revision
  const short = `${words} (${commit.slice(0, 10)})`
  return { label: `${path} at ${short}`, short, evaluated: await evaluateBytes(found.bytes, `${path}@${words}`) }
}

const fromOf = ({ folder }: FileAt, range: Range): Promise<string> =>
  range.fork ? forkOf(folder, range) : commitOf(folder, range.from)

const called = (says: string, help?: string): Stopped => new Stopped(exitStatus.called, says, help)
