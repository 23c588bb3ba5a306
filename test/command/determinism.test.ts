import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { homedir, hostname } from 'node:os'
import { join, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { usersCacheFolder } from '../../src/sheets/pdf/cache-folder.ts'
import { folderWith, sound, undated } from './notebooks.ts'
import { unpacked } from './pdf-text.ts'
import { dist, undercroft } from './run-undercroft.ts'

type Env = Readonly<Record<string, string>>

/** Issues in a folder and temporary folder of its own; returns the bytes of both files. */
async function issued(text: string, { env = {}, place = '.' }: { env?: Env; place?: string } = {}) {
  const cwd = folderWith()
  const [folder, temporary] = [join(cwd, place), join(cwd, 'a temporary folder')]
  for (const made of [folder, temporary]) mkdirSync(made, { recursive: true })
  writeFileSync(join(folder, 'roof.md'), text)
  const file = join(place === '.' ? '' : folder, 'roof.md')
  const { status } = await undercroft(['issue', file, '--out', 'out'], { cwd, env: { TMPDIR: temporary, ...env } })
  const [html, pdf] = ['html', 'pdf'].map(ending => readFileSync(join(cwd, `out/roof.${ending}`)))
  if (!html || !pdf) throw new Error('nothing was issued')
  return { status, html, pdf, cwd }
}

const dates = (pdf: Buffer): string[] => [...unpacked(pdf).matchAll(/D:(\d{14})/g)].map(found => found[1] ?? '')

describe.each([
  ['the front matter’s date', sound, {}, '20260302000000'],
  // 1772409600 is 2026-03-02 00:00:00 UTC (`date -u -d @1772409600`); an hour more, so that it is not the notebook's own.
  ['SOURCE_DATE_EPOCH', sound, { SOURCE_DATE_EPOCH: '1772413200' }, '20260302010000'],
  ['no date at all', undated, {}, '19700101000000'],
] as const)('issue with %s', (_, text, env, date) => {
  it('gives the same bytes in another process, folder, time zone and language', async () => {
    const first = await issued(text, { env: { ...env, TZ: 'UTC', LANG: 'C' } })
    const elsewhere = { ...env, TZ: 'Asia/Kolkata', LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8' }
    const second = await issued(text, { env: elsewhere, place: 'another folder/deeper' })
    expect(first.html.equals(second.html)).toBe(true)
    expect(first.pdf.equals(second.pdf)).toBe(true)
    expect([...new Set(dates(first.pdf))]).toEqual([date])
  })
})

describe('issue', () => {
  it('gives the same bytes with page numbers guessed right, guessed wrong and not guessed', async () => {
    const text = sound
    const plain = await issued(text)
    const cache = folderWith()
    mkdirSync(join(cache, 'undercroft'))
    for (const name of ['chromium-147.0.0-x64', 'fonts-147.0.0']) {
      const unpackedOnce = join(usersCacheFolder(process.env), name)
      if (existsSync(unpackedOnce)) symlinkSync(unpackedOnce, join(cache, 'undercroft', name))
    }
    const cwd = folderWith({ 'roof.md': text })
    const run = (guess: string) =>
      undercroft(['issue', 'roof.md', '--out', guess], { cwd, env: { XDG_CACHE_HOME: cache } })
    await run('none')
    await run('right')
    const pages = join(cache, 'undercroft/pages')
    const [kept = ''] = readdirSync(pages)
    const numbers = JSON.parse(readFileSync(join(pages, kept), 'utf8'))
    const wrong = Object.fromEntries(Object.keys(numbers.pageOf).map(id => [id, 77]))
    for (const [name, bytes] of [
      ['wrong', JSON.stringify({ pages: 199, pageOf: wrong })],
      ['broken', '{"pages": 3, "pageOf": null}'],
      ['torn', '{"pages": 3, "pa'],
    ] as const) {
      writeFileSync(join(pages, kept), bytes)
      await run(name)
    }
    for (const name of ['none', 'right', 'wrong', 'broken', 'torn'])
      for (const ending of ['html', 'pdf'] as const)
        expect([name, ending, readFileSync(join(cwd, name, `roof.${ending}`)).equals(plain[ending])]).toEqual([
          name,
          ending,
          true,
        ])
  })

  it('puts no folder, user or name of the machine into a package', async () => {
    const { html, pdf, cwd } = await issued(sound, { place: 'a folder of this machine' })
    const all = `${html.toString('utf8')}\n${unpacked(pdf)}`
    const telling = [
      cwd,
      'undercroft-command-',
      'a folder of this machine',
      resolve(dist, '..'),
      'file:',
      'node_modules',
    ]
    // A name of two letters stands in any text.
    telling.push(...[homedir(), hostname()].filter(name => name.length > 5))
    expect(telling.filter(text => all.includes(text))).toEqual([])
    // The unpacking is sound: the attached notebook can be read.
    expect(all).toContain('basis: drawing SP-12')
  })

  it('refuses a SOURCE_DATE_EPOCH that is no number of seconds, or past the year 9999, and ends with 2', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    for (const epoch of ['yesterday', '1.5', '-1', '253402300800', '999999999999']) {
      const { status, stderr } = await undercroft(['issue', 'roof.md', '--html-only'], {
        cwd,
        env: { SOURCE_DATE_EPOCH: epoch },
      })
      expect([epoch, status]).toEqual([epoch, 2])
      expect(stderr).toContain(`SOURCE_DATE_EPOCH is \`${epoch}\``)
    }
    expect(existsSync(join(cwd, 'roof.html'))).toBe(false)
  })
})
