import { chmod, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises'
import { platform, tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { chooseCacheFolder } from '../../../src/sheets/pdf/cache-folder.ts'
import { installHelp } from '../../../src/sheets/pdf/find-browser.ts'
import { openBrowser, type PrintFailure, printPackage } from '../../../src/sheets/pdf/index.ts'
import { documentWith, packageOf, SAMPLE_FONTS } from './sample-document.ts'

let folder: string
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'undercroft-test-'))
})
afterAll(() => rm(folder, { recursive: true, force: true }))

async function refusal(browser: string): Promise<PrintFailure> {
  const result = await openBrowser({ variables: process.env, browser })
  if (result.ok) throw new Error('a browser was opened')
  return result
}

async function program(name: string, script: string): Promise<string> {
  const path = join(folder, name)
  await writeFile(path, `#!/bin/sh\n${script}\n`)
  await chmod(path, 0o755)
  return path
}

describe('browser named by the user', () => {
  test('missing: a path where nothing is refused, and no other browser is taken', async () => {
    const result = await refusal(join(folder, 'nowhere'))
    expect(result.reason).toBe('no-browser')
    expect(result.says).toBe(`\`${join(folder, 'nowhere')}\` is not a program that can be run`)
    expect(result.help).toContain(installHelp())
  })

  test('missing: a folder or a file that is no program is refused', async () => {
    expect((await refusal(folder)).reason).toBe('no-browser')
    await writeFile(join(folder, 'text'), 'text')
    expect((await refusal(join(folder, 'text'))).reason).toBe('no-browser')
  })

  test('library: a program that lacks a library is refused by the library', async () => {
    const says =
      'error while loading shared libraries: libnss3.so: cannot open shared object file: No such file or directory'
    const result = await refusal(await program('lacking', `echo "$0: ${says}" >&2; exit 127`))
    expect(result.reason).toBe('library-missing')
    expect(result.says).toContain('`libnss3.so`')
    expect(result.help).toContain('apt-get install')
  })

  test('library: a program for another loader is refused as such', async () => {
    const path = join(folder, 'foreign')
    await writeFile(path, '#!/nowhere/loader\n')
    await chmod(path, 0o755)
    expect((await refusal(path)).reason).toBe('library-missing')
  })

  test('start: a program that is no browser is refused with its own last words', async () => {
    const result = await refusal(await program('other', 'echo "I only weigh concrete" >&2; exit 3'))
    expect(result).toMatchObject({ reason: 'print-failed' })
    expect(result.says).toContain('I only weigh concrete')
  })
})

describe('help', () => {
  test('help: each platform is told its own way', () => {
    expect(installHelp('linux')).toContain('apt-get install chromium')
    expect(installHelp('darwin')).toContain('Install Google Chrome')
    expect(installHelp('win32')).toContain('%USERPROFILE%')
  })
})

describe('what is left behind', () => {
  const sessions = async () => (await readdir(folder)).filter(name => name.startsWith('undercroft-print-'))
  const before = { tmp: process.env.TMPDIR }
  beforeAll(() => {
    process.env.TMPDIR = folder
  })
  afterAll(() => {
    if (before.tmp === undefined) delete process.env.TMPDIR
    else process.env.TMPDIR = before.tmp
  })

  test('close: the temporary files go, and a second close does nothing', async () => {
    const opened = await openBrowser({ variables: process.env })
    if (!opened.ok) throw new Error(opened.says)
    expect(await sessions()).toHaveLength(1)
    await opened.close()
    await opened.close()
    expect(await sessions()).toEqual([])
    expect(await opened.print(documentWith('<p>x</p>'), { fonts: SAMPLE_FONTS })).toMatchObject({
      ok: false,
      reason: 'print-failed',
    })
  })

  test('failure: a refused start and a refused print leave nothing', async () => {
    await refusal(await program('dead', 'exit 1'))
    const print = await printPackage(documentWith('<p>Ж</p>'), { variables: process.env, fonts: SAMPLE_FONTS })
    expect(print.ok).toBe(false)
    expect(await sessions()).toEqual([])
  })

  test('signal: a print is stopped in its middle, answers so, and leaves nothing', async () => {
    const stop = new AbortController()
    const opened = await openBrowser({ variables: process.env, signal: stop.signal })
    if (!opened.ok) throw new Error(opened.says)
    const print = opened.print(packageOf(60), { fonts: SAMPLE_FONTS })
    setTimeout(() => stop.abort(), 150)
    const result = await print
    expect(result).toMatchObject({ ok: false, reason: 'print-failed', says: 'the printing was stopped' })
    await opened.close()
    expect(await sessions()).toEqual([])
  })

  test('signal: stopped before or during the start, no browser comes', async () => {
    const options = { variables: process.env, fonts: SAMPLE_FONTS }
    const early = await printPackage(packageOf(1), { ...options, signal: AbortSignal.abort() })
    expect(early).toMatchObject({ ok: false, says: 'the printing was stopped' })
    const during = await printPackage(packageOf(60), { ...options, signal: AbortSignal.timeout(30) })
    expect(during).toMatchObject({ ok: false, says: 'the printing was stopped' })
    expect(await sessions()).toEqual([])
  })

  test('signal: stopped while the browser is unpacked, the cache has no half folder', async () => {
    const cacheFolder = join(folder, 'cache')
    const signal = AbortSignal.timeout(60)
    const result = await printPackage(packageOf(1), {
      variables: process.env,
      fonts: SAMPLE_FONTS,
      cacheFolder,
      signal,
    })
    expect(result).toMatchObject({ ok: false, says: 'the printing was stopped' })
    expect(await readdir(cacheFolder)).toEqual([])
    expect(await sessions()).toEqual([])
  })

  test('cache: a cache folder that cannot be made falls back to a private one', {
    skip: platform() === 'win32',
  }, async () => {
    await writeFile(join(folder, 'in-the-way'), '')
    const chosen = await chooseCacheFolder({ variables: { XDG_CACHE_HOME: join(folder, 'in-the-way') } })
    expect(chosen).toMatch(/undercroft-cache-of-\d+$/)
    expect(chosen.startsWith(folder)).toBe(true)
    expect(await chooseCacheFolder({ variables: { XDG_CACHE_HOME: folder } })).toBe(join(folder, 'undercroft'))
    expect(await chooseCacheFolder({ variables: { HOME: folder } })).toBe(join(folder, '.cache', 'undercroft'))
    // No folder can be made there, and the library's own way to make several never comes back.
    if (process.platform === 'linux')
      expect(await chooseCacheFolder({ variables: { HOME: '/proc/none/of/us' } })).toContain('undercroft-cache-')
  })
})
