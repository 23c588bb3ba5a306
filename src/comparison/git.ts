import { execFile } from 'node:child_process'
import { promisify } from 'node:util'

/** Why version control could not give what was asked, in a sentence for the user. */
export class GitRefusal extends Error {
  readonly help: string | undefined

  constructor(says: string, help?: string) {
    super(says)
    this.help = help
  }
}

const call = promisify(execFile)

/** Nothing of the repository's own settings may start a program, wait for a lock or write. */
const quiet = ['--no-pager', '--no-optional-locks', '-c', 'core.fsmonitor=false', '-c', 'core.quotePath=false']

/** A notebook is at most a few megabytes; a list of renamed files may be longer. */
const most = 64 * 1024 * 1024

type Answer = { readonly ok: true; readonly bytes: Buffer } | { readonly ok: false; readonly says: string }

/** Where a hook of git is at work, these name its repository by a path from elsewhere. */
const ofHooks = ['GIT_DIR', 'GIT_WORK_TREE', 'GIT_INDEX_FILE', 'GIT_PREFIX']

const surroundings = (): Record<string, string | undefined> => ({
  ...Object.fromEntries(Object.entries(process.env).filter(([name]) => !ofHooks.includes(name))),
  LC_ALL: 'C',
})

/** Runs git in a folder, with `input` to read; refuses (throws) only where there is no git program or it gives more than can be read. */
export async function git(folder: string, args: readonly string[], input?: string): Promise<Answer> {
  try {
    const called = call('git', [...quiet, '-C', folder, ...args], {
      encoding: 'buffer',
      maxBuffer: most,
      env: surroundings(),
    })
    called.child.stdin?.on('error', () => undefined).end(input ?? '')
    const { stdout } = await called
    return { ok: true, bytes: stdout }
  } catch (thrown) {
    if (!(thrown instanceof Error)) throw thrown
    const code = 'code' in thrown ? thrown.code : undefined
    if (code === 'ENOENT')
      throw new GitRefusal(
        'To read a revision the `git` program is needed, and it is not found',
        'Install git, or give two files: `undercroft compare old.md new.md`',
      )
    if (typeof code !== 'number') throw new GitRefusal(`git cannot be used: ${thrown.message}`)
    return { ok: false, says: lastWords('stderr' in thrown ? String(thrown.stderr) : '') }
  }
}

/** What git said last, without its own heading. */
const lastWords = (stderr: string): string =>
  (
    stderr
      .trim()
      .split('\n')
      .find(line => /^(?:fatal|error):/.test(line)) ?? ''
  ).replace(/^(?:fatal|error): /, '')
