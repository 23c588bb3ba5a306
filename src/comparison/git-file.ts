import { printable } from '../diagnostic/printable.ts'
import { GitRefusal, git } from './git.ts'
import { blobAt } from './git-blob.ts'

/** A file as the author names it, taken apart: git is asked from its folder. */
export interface FileAt {
  readonly folder: string
  readonly name: string
  /** As typed, for messages. */
  readonly shown: string
}

/** A file at a revision. */
export interface Revised {
  readonly bytes: Uint8Array
  /** Its path in the repository then; another than now where it was renamed since. */
  readonly path: string
  readonly renamed: boolean
}

/** The two ends of `A..B`, or of `A...B`, whose first end is where the two parted. An end left out is HEAD. */
export interface Range {
  readonly from: string
  readonly to: string
  readonly fork: boolean
}

/** Returns the ends of a range of revisions; nothing where the text is one revision. */
export function rangeOf(text: string): Range | undefined {
  const found = /^(.*?)(\.\.\.?)(.*)$/.exec(text)
  if (!found) return undefined
  const [, from = '', dots, to = ''] = found
  return { from: from || 'HEAD', to: to || 'HEAD', fork: dots === '...' }
}

/**
 * Returns the commit of a revision. Refuses (throws) where the folder is in no repository, where there is no such revision, and a
 * revision that begins with `-`, which git would take for an option.
 */
export async function commitOf(folder: string, revision: string): Promise<string> {
  const shown = printable(revision)
  if (revision.trim() === '') throw new GitRefusal('No revision is named', howTo)
  if (revision.startsWith('-')) throw new GitRefusal(`A revision cannot begin with \`-\`: \`${shown}\``)
  const inside = await git(folder, ['rev-parse', '--is-inside-work-tree'])
  if (!inside.ok || inside.bytes.toString().trim() !== 'true')
    throw new GitRefusal(
      `\`${shown}\` is no file here, and cannot be a revision: the notebook is in no repository`,
      inside.ok || /not a git repository/.test(inside.says) ? undefined : `git says: ${inside.says}`,
    )
  const named = await wordOf(folder, ['rev-parse', '--verify', '--quiet', '--end-of-options', revision])
  const commit = named && (await wordOf(folder, ['rev-parse', '--verify', '--quiet', `${named}^{commit}`]))
  if (commit) return commit
  if ((await wordOf(folder, ['rev-list', '--max-count=1', '--all'])) === '')
    throw new GitRefusal(`\`${shown}\` is no revision: the repository has no commit yet`)
  const isShallow = (await wordOf(folder, ['rev-parse', '--is-shallow-repository'])) === 'true'
  throw new GitRefusal(
    `\`${shown}\` is neither a file here nor a revision of the repository`,
    isShallow ? 'The repository is shallow: `git fetch --unshallow --tags` brings what is older' : howTo,
  )
}

/** What git answers in a word; nothing where it refuses. */
async function wordOf(folder: string, args: readonly string[]): Promise<string | undefined> {
  const found = await git(folder, args)
  return found.ok ? found.bytes.toString().trim() : undefined
}

const howTo = 'A revision is a commit, a branch or a tag: `HEAD~1`, `main`, `v1`; `git log --oneline` lists commits'

/** The commit where two revisions parted. */
export async function forkOf(folder: string, { from, to }: Range): Promise<string> {
  const [a, b] = [await commitOf(folder, from), await commitOf(folder, to)]
  const base = await git(folder, ['merge-base', a, b])
  if (!base.ok) throw new GitRefusal(`\`${from}\` and \`${to}\` have no commit in common`)
  return base.bytes.toString().trim()
}

/**
 * Reads a file as it was at a commit, from git's own store: the author's files are not touched. Where it had another name then, git's
 * finding of renames between that commit and `until` (the working copy where left out) is followed.
 */
export async function fileAt(file: FileAt, commit: string, until?: string): Promise<Revised> {
  const path = await pathOf(file)
  const { shown } = file
  const plain = await blobAt(file.folder, commit, { path, shown })
  if (plain) return { bytes: plain, path, renamed: false }
  const was = await nameBefore(file.folder, path, { commit, until })
  const bytes = was === undefined ? undefined : await blobAt(file.folder, commit, { path: was, shown })
  if (!bytes || was === undefined)
    throw new GitRefusal(`\`${file.shown}\` does not exist at ${commit.slice(0, 10)}, under this name or another`)
  return { bytes, path: was, renamed: true }
}

/** The file's path from the top of the repository. */
async function pathOf({ folder, name }: FileAt): Promise<string> {
  const prefix = await git(folder, ['rev-parse', '--show-prefix'])
  return `${prefix.ok ? prefix.bytes.toString().replace(/\n$/, '') : ''}${name}`
}

/** The name a file had at a commit, as git recognises it by content. */
async function nameBefore(
  folder: string,
  path: string,
  { commit, until }: { commit: string; until: string | undefined },
): Promise<string | undefined> {
  const ends = until === undefined ? [commit] : [commit, until]
  const flags = [
    '--no-ext-diff',
    '--no-textconv',
    '--find-renames',
    '--diff-filter=R',
    '--name-status',
    '--no-relative',
    '-z',
  ]
  const found = await git(folder, ['diff', ...flags, ...ends, '--'])
  if (!found.ok) return undefined
  const fields = found.bytes.toString().split('\0')
  const at = fields.findIndex((field, index) => field === path && index % 3 === 2)
  return at < 0 ? undefined : fields[at - 1]
}
