import { printable } from '../diagnostic/printable.ts'
import { GitRefusal, git } from './git.ts'

/**
 * A file of a commit by its path from the top of the repository; nothing where there is none. What was a link then, or lay in a folder that
 * was one, is followed inside that commit. Refuses (throws) a link that leads out of it, nowhere or in a ring: its text is no notebook.
 */
export async function blobAt(
  folder: string,
  commit: string,
  { path, shown }: { readonly path: string; readonly shown: string },
): Promise<Uint8Array | undefined> {
  // One name a line: a path over several lines is looked up as it stands.
  if (/[\r\n]/.test(path)) return blobOf(folder, `${commit}:${path}`)
  const found = await git(folder, ['cat-file', '--batch-check', '--follow-symlinks'], `${commit}:${path}\n`)
  const [head = '', target = ''] = found.ok ? found.bytes.toString().split('\n') : []
  const way = ways[head.split(' ')[0] ?? '']
  if (way) throw new GitRefusal(`\`${shown}\` was a link at ${commit.slice(0, 10)}, ${way(printable(target))}`, help)
  const [id = '', kind] = head.split(' ')
  return kind === 'blob' ? blobOf(folder, id) : undefined
}

const help = 'Name the file it led to, or compare two files: `undercroft compare old.md new.md`'

/** What git answers of a link that it cannot follow. */
const ways: Readonly<Record<string, (target: string) => string>> = {
  symlink: target => `and led out of the repository, to \`${target}\``,
  dangling: () => 'and led to nothing in that revision',
  loop: () => 'and led in a ring',
  notdir: () => 'and led through a file as if it were a folder',
}

async function blobOf(folder: string, name: string): Promise<Uint8Array | undefined> {
  const found = await git(folder, ['cat-file', 'blob', name])
  return found.ok ? found.bytes : undefined
}
