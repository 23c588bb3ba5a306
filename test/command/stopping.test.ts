import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { describe, expect, it } from 'vitest'
import { failing, folderWith, sound } from './notebooks.ts'
import { startUndercroft, undercroft } from './run-undercroft.ts'

/** A folder with a notebook, a package of an earlier run, and a temporary folder of its own. */
async function issued() {
  const cwd = folderWith({ 'roof.md': failing })
  const temporary = join(cwd, 'tmp')
  mkdirSync(temporary)
  const env = { TMPDIR: temporary }
  await undercroft(['issue', 'roof.md', '--out', 'out'], { cwd, env })
  const read = () => ['html', 'pdf'].map(ending => readFileSync(join(cwd, `out/roof.${ending}`)))
  return {
    cwd,
    env,
    temporary,
    old: read(),
    read,
    start: () => startUndercroft(['issue', '-', '--out', 'out'], { cwd, env, input: sound }),
  }
}

async function until(what: string, isSo: () => boolean): Promise<void> {
  for (let waited = 0; !isSo(); waited += 10) {
    if (waited > 20_000) throw new Error(`waited in vain until ${what}`)
    await pause(10)
  }
}

const isPrinting = (temporary: string) => (): boolean =>
  readdirSync(temporary, { recursive: true, encoding: 'utf8' }).some(name => /page-\w+$/.test(name))

/** Processes that were started for a temporary folder. */
const strays = (temporary: string): string[] =>
  readdirSync('/proc')
    .filter(name => /^\d+$/.test(name))
    .filter(id => {
      try {
        return readFileSync(`/proc/${id}/cmdline`, 'utf8').includes(temporary)
      } catch {
        return false
      }
    })

describe.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)('%s while printing', signal => {
  it('ends the program by that signal and leaves nothing behind: no file, no browser', async () => {
    const { cwd, temporary, start } = await issued()
    const { child, done } = start()
    await until('a page is printed', isPrinting(temporary))
    child.kill(signal)
    const ran = await done
    expect(ran).toEqual({ status: null, signal, stdout: '', stderr: '' })
    expect(readdirSync(temporary)).toEqual([])
    expect(readdirSync(join(cwd, 'out')).sort()).toEqual(['roof.html', 'roof.pdf'])
    await until('the browser has ended', () => strays(temporary).length === 0)
  })
})

describe('SIGKILL', () => {
  it('at any moment leaves each file whole, old or new, and the next run works', async () => {
    const { cwd, env, temporary, old, read } = await issued()
    const arguments_ = ['issue', 'roof.md', '--paper', 'letter', '--out', 'out']
    const quick = Date.now()
    await undercroft(['issue', 'roof.md', '--paper', 'letter', '--out', 'other'], { cwd, env })
    const length = Date.now() - quick
    const fresh = ['html', 'pdf'].map(ending => readFileSync(join(cwd, `other/roof.${ending}`)))
    for (const part of [0.3, 0.6, 0.8, 0.9, 0.95, 1]) {
      const { child, done } = startUndercroft(arguments_, { cwd, env })
      await pause(length * part)
      child.kill('SIGKILL')
      await done
      for (const [index, bytes] of read().entries())
        expect([part, index, [old[index], fresh[index]].some(whole => whole?.equals(bytes))]).toEqual([
          part,
          index,
          true,
        ])
    }
    expect((await undercroft(arguments_, { cwd, env })).status).toBe(3)
    expect(read().map((bytes, index) => fresh[index]?.equals(bytes))).toEqual([true, true])
    expect(readdirSync(temporary)).toEqual([])
    await until('no browser is left', () => strays(temporary).length === 0)
  })
})

describe('two runs at once', () => {
  it('into one folder both end well and leave whole files', async () => {
    const { cwd, env } = await issued()
    await undercroft(['issue', 'roof.md', '--out', 'once'], { cwd, env })
    const both = await Promise.all([1, 2].map(() => undercroft(['issue', 'roof.md', '--out', 'both'], { cwd, env })))
    expect(both.map(({ status }) => status)).toEqual([3, 3])
    expect(readdirSync(join(cwd, 'both')).sort()).toEqual(['roof.html', 'roof.pdf'])
    for (const name of ['roof.html', 'roof.pdf'])
      expect([name, readFileSync(join(cwd, 'both', name)).equals(readFileSync(join(cwd, 'once', name)))]).toEqual([
        name,
        true,
      ])
  })
})

describe('a signal before anything is open', () => {
  it('ends the program at once', async () => {
    const cwd = folderWith()
    const { child, done } = startUndercroft(['check', '/dev/stdin'], { cwd, stdio: ['pipe', 'pipe', 'pipe'] })
    await pause(20)
    child.kill('SIGINT')
    const { signal } = await done
    expect([signal, existsSync(join(cwd, 'out'))]).toEqual(['SIGINT', false])
  })
})
