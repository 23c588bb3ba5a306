import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { onTestFinished } from 'vitest'

/** A repository of version control in a temporary folder, for one test. */
export interface Repository {
  readonly folder: string
  readonly write: (path: string, text: string) => void
  readonly git: (...args: readonly string[]) => string
  /** Takes everything in and commits it. */
  readonly commit: (message: string) => void
}

/** Nothing of the machine's own settings reaches it. */
const own = { GIT_CONFIG_GLOBAL: '/dev/null', GIT_CONFIG_SYSTEM: '/dev/null', GIT_CONFIG_NOSYSTEM: '1' }

export function repository(): Repository {
  const folder = mkdtempSync(join(tmpdir(), 'undercroft-compare-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  const git = (...args: readonly string[]): string =>
    execFileSync('git', ['-C', folder, '-c', 'user.name=M. Aird', '-c', 'user.email=aird@example.org', ...args], {
      encoding: 'utf8',
      env: { ...process.env, ...own },
      stdio: 'pipe',
    })
  git('init', '--quiet', '--initial-branch', 'main')
  const write = (path: string, text: string): void => {
    mkdirSync(dirname(join(folder, path)), { recursive: true })
    writeFileSync(join(folder, path), text)
  }
  const commit = (message: string): void => {
    git('add', '--all')
    git('commit', '--quiet', '--message', message)
  }
  return { folder, write, git, commit }
}
