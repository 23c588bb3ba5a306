import { execFileSync } from 'node:child_process'
import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { failing, faulty, folderWith, sound } from './notebooks.ts'
import { pageTexts, unpacked } from './pdf-text.ts'
import { plainUser, undercroft } from './run-undercroft.ts'

describe('issue', () => {
  it('writes a PDF and one HTML file beside the notebook, says what it wrote, and ends with 0', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { status, stdout, stderr } = await undercroft(['issue', 'roof.md'], { cwd })
    expect([status, stderr]).toEqual([0, ''])
    expect(readdirSync(cwd).sort()).toEqual(['roof.html', 'roof.md', 'roof.pdf'])
    const pages = await pageTexts(join(cwd, 'roof.pdf'))
    expect(stdout).toBe(`Wrote roof.html (2 of 2 lines close)\nWrote roof.pdf (${pages.length} pages)\n`)
    expect(pages[0]).toContain('Roof of the store')
    expect(pages.join().replaceAll(' ', '')).not.toContain('DRAFT')
  })

  it('says that all is smaller where something is wider than the sheet', async () => {
    const cwd = folderWith({ 'roof.md': `${sound}\n\n| a |\n| --- |\n| ${'w'.repeat(200)} |\n` })
    const { status, stderr } = await undercroft(['issue', 'roof.md'], { cwd })
    expect(status).toBe(0)
    expect(stderr).toMatch(
      /^Something is wider than the sheet, so the browser printed its part of the package \d+\.\d % smaller: /m,
    )
  })

  it('makes the folder it is to write into', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { status, stdout } = await undercroft(['issue', 'roof.md', '--out', 'a/b', '--html-only'], { cwd })
    expect([status, stdout]).toEqual([0, 'Wrote a/b/roof.html (2 of 2 lines close)\n'])
    expect(readdirSync(join(cwd, 'a/b'))).toEqual(['roof.html'])
  })

  it('writes the package and ends with 3 where a check is not satisfied', async () => {
    const cwd = folderWith({ 'roof.md': failing })
    const { status, stdout } = await undercroft(['issue', 'roof.md'], { cwd })
    expect(status).toBe(3)
    expect(stdout).toContain('Wrote roof.pdf')
    expect((await pageTexts(join(cwd, 'roof.pdf')))[0]).toMatch(/not satisfied/i)
  })

  it('gives what it wrote as data with --format json', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { stdout } = await undercroft(['issue', 'roof.md', '--format', 'json'], { cwd })
    const { pages, ...rest } = JSON.parse(stdout)
    expect(rest).toEqual({ html: 'roof.html', pdf: 'roof.pdf', lines: 2, closing: 2 })
    expect((await pageTexts(join(cwd, 'roof.pdf'))).length).toBe(pages)
  })

  it('takes a notebook from standard input and writes package.html here', async () => {
    const cwd = folderWith()
    const { status, stdout } = await undercroft(['issue', '-', '--html-only'], { cwd, input: sound })
    expect([status, stdout]).toEqual([0, 'Wrote package.html (2 of 2 lines close)\n'])
    expect(readFileSync(join(cwd, 'package.html'), 'utf8')).toContain('undercroft issue - --html-only')
  })

  it('sets the paper that is asked for in place of the notebook’s own', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    await undercroft(['issue', 'roof.md', '--paper', 'letter'], { cwd })
    // US letter in points: 8.5 in by 11 in, 612 by 792.
    expect(unpacked(readFileSync(join(cwd, 'roof.pdf')))).toMatch(/\/MediaBox \[0 0 612 792\]/)
  })

  it('states the command in the record so that a shell takes it as it stands', async () => {
    const cwd = folderWith({ "the store's roof.md": sound })
    await undercroft(['issue', "the store's roof.md", '--out', 'out', '--html-only'], { cwd })
    const page = readFileSync(join(cwd, 'out', "the store's roof.html"), 'utf8')
    expect(page).toContain(`undercroft issue 'the store'\\''s roof.md' --html-only`)
  })

  it('is not put off by a formula of the text that cannot be set, and says which', async () => {
    const cwd = folderWith({ 'roof.md': `${sound}\nSo $\\frac{1$ it is.\n` })
    const { stderr } = await undercroft(['issue', 'roof.md', '--html-only'], { cwd })
    expect(stderr).toContain('A formula of the text could not be set and stands as typed: \\frac{1')
  })
})

describe('issue of a notebook with errors', () => {
  it('writes nothing, leaves an older package as it was, says so, and ends with 1', async () => {
    const cwd = folderWith({ 'roof.md': faulty, 'roof.html': 'old page', 'roof.pdf': 'old print' })
    const { status, stdout, stderr } = await undercroft(['issue', 'roof.md'], { cwd })
    expect([status, stdout]).toEqual([1, ''])
    expect(stderr).toContain('Nothing was issued: a notebook with errors can only be printed with `--draft`\n')
    expect(stderr).toContain('`roof.html` is of an earlier run and stays as it was\n')
    expect(stderr).toContain('`roof.pdf` is of an earlier run and stays as it was\n')
    expect(readdirSync(cwd).sort()).toEqual(['roof.html', 'roof.md', 'roof.pdf'])
    expect(readFileSync(join(cwd, 'roof.pdf'), 'utf8')).toBe('old print')
    expect(readFileSync(join(cwd, 'roof.html'), 'utf8')).toBe('old page')
  })

  it('does not even make the folder', async () => {
    const cwd = folderWith({ 'roof.md': faulty })
    await undercroft(['issue', 'roof.md', '--out', 'out'], { cwd })
    expect(existsSync(join(cwd, 'out'))).toBe(false)
  })

  /** The mark is letter-spaced, which a PDF shows as blanks. */
  const isMarked = (page: string): boolean => page.replaceAll(' ', '').includes('DRAFT')

  it('is a draft with --draft: another name, DRAFT on every page, the older package untouched, and still ends with 1', async () => {
    const cwd = folderWith({ 'roof.md': faulty, 'roof.pdf': 'old print' })
    const { status } = await undercroft(['issue', 'roof.md', '--draft'], { cwd })
    expect(status).toBe(1)
    expect(readdirSync(cwd).sort()).toEqual(['roof-draft.html', 'roof-draft.pdf', 'roof.md', 'roof.pdf'])
    expect(readFileSync(join(cwd, 'roof.pdf'), 'utf8')).toBe('old print')
    expect((await pageTexts(join(cwd, 'roof-draft.pdf'))).map(isMarked)).not.toContain(false)
    expect(readFileSync(join(cwd, 'roof-draft.html'), 'utf8')).toContain('DRAFT')
  })

  it('is a draft with --draft even where the notebook is sound', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { status } = await undercroft(['issue', 'roof.md', '--draft'], { cwd })
    expect([status, existsSync(join(cwd, 'roof.pdf'))]).toEqual([0, false])
    expect((await pageTexts(join(cwd, 'roof-draft.pdf'))).map(isMarked)).not.toContain(false)
  })
})

describe('issue without a browser', () => {
  it('writes the HTML, says what to do, and ends with 4', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { status, stdout, stderr } = await undercroft(['issue', 'roof.md', '--browser', '/nonexistent'], { cwd })
    expect([status, stdout]).toEqual([4, 'Wrote roof.html (2 of 2 lines close)\n'])
    expect(stderr).toMatch(
      /^No PDF was written: `\/nonexistent` is not a program that can be run\nName the program file/,
    )
    expect(readdirSync(cwd).sort()).toEqual(['roof.html', 'roof.md'])
    expect(readFileSync(join(cwd, 'roof.html'), 'utf8')).toMatch(/<\/html>\s*$/)
  })

  it('takes the browser from UNDERCROFT_BROWSER, and says of an older PDF that it does not belong', async () => {
    const cwd = folderWith({ 'roof.md': sound, 'roof.pdf': 'old print' })
    const env = { UNDERCROFT_BROWSER: '/bin/false' }
    const { status, stderr } = await undercroft(['issue', 'roof.md'], { cwd, env })
    expect(status).toBe(4)
    expect(stderr).toContain('`roof.pdf` is of an earlier run and does not belong to this `roof.html`')
    expect(readFileSync(join(cwd, 'roof.pdf'), 'utf8')).toBe('old print')
  })

  it('needs none for --html-only', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { status } = await undercroft(['issue', 'roof.md', '--html-only', '--browser', '/nonexistent'], { cwd })
    expect(status).toBe(0)
  })
})

describe('issue into a place that cannot be written', () => {
  it('refuses a file where the folder should be', async () => {
    const cwd = folderWith({ 'roof.md': sound, out: 'a file' })
    const { status, stdout, stderr } = await undercroft(['issue', 'roof.md', '--out', 'out'], { cwd })
    expect([status, stdout]).toEqual([4, ''])
    expect(stderr).toBe(
      '`out/roof.html` cannot be written: a part of the path is not a folder\nName another folder with `--out FOLDER`\n',
    )
    expect(readFileSync(join(cwd, 'out'), 'utf8')).toBe('a file')
  })

  it.runIf(process.platform === 'linux')('refuses a place where no folder can be made', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { status, stderr } = await undercroft(['issue', 'roof.md', '--out', '/proc/out/more'], { cwd })
    expect(status).toBe(4)
    expect(stderr).toMatch(/^`\/proc\/out\/more\/roof\.html` cannot be written: /)
  })

  it('refuses a folder where the file should be', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    mkdirSync(join(cwd, 'roof.pdf'))
    const { status, stderr } = await undercroft(['issue', 'roof.md'], { cwd })
    expect([status, stderr.split('\n')[0]]).toEqual([4, '`roof.pdf` cannot be written: a folder of that name is there'])
    expect(readdirSync(cwd).sort()).toEqual(['roof.md', 'roof.pdf'])
  })

  it('refuses a folder that this user may not write to', async context => {
    const user = await plainUser()
    if (!user) return context.skip('root may write everywhere, and no other user reaches the program')
    const cwd = folderWith({ 'roof.md': sound })
    chmodSync(cwd, 0o755)
    mkdirSync(join(cwd, 'out'), { mode: 0o555 })
    const { status, stderr } = await undercroft(['issue', 'roof.md', '--out', 'out'], { cwd, ...user })
    expect([status, stderr.split('\n')[0]]).toEqual([4, '`out/roof.html` cannot be written: access is not permitted'])
  })

  it('refuses to write over its own notebook', async () => {
    const cwd = folderWith({ 'roof.html': sound })
    symlinkSync('roof.html', join(cwd, 'link.md'))
    for (const args of [['roof.html'], ['link.md', '--out', '.']]) {
      if (args[0] === 'link.md') symlinkSync('roof.html', join(cwd, 'link.html'))
      const { status, stderr } = await undercroft(['issue', ...args], { cwd })
      expect([args, status]).toEqual([args, 2])
      expect(stderr).toContain(`would be written over its own notebook \`${args[0]}\``)
    }
    expect(readFileSync(join(cwd, 'roof.html'), 'utf8')).toBe(sound)
  })

  it('leaves the older package whole on a full disk, says so, and leaves nothing behind', async context => {
    const cwd = folderWith({ 'roof.md': sound })
    const out = join(cwd, 'out')
    mkdirSync(out)
    try {
      execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=900k', 'tmpfs', out], { stdio: 'ignore' })
    } catch {
      return context.skip('a small disk can only be mounted by root')
    }
    try {
      const old = { 'roof.html': 'h'.repeat(300_000), 'roof.pdf': 'p'.repeat(300_000) }
      for (const [name, text] of Object.entries(old)) writeFileSync(join(out, name), text)
      const { status, stdout, stderr } = await undercroft(['issue', 'roof.md', '--out', 'out'], { cwd })
      expect([status, stdout]).toEqual([4, ''])
      expect(stderr).toBe(
        '`out/roof.html` cannot be written: the disk is full\nName another folder with `--out FOLDER`\n',
      )
      expect(readdirSync(out).sort()).toEqual(['roof.html', 'roof.pdf'])
      for (const [name, text] of Object.entries(old)) expect(readFileSync(join(out, name), 'utf8') === text).toBe(true)
    } finally {
      execFileSync('umount', [out])
    }
  })

  it('writes neither file where only the HTML still fits', async context => {
    const cwd = folderWith({ 'roof.md': sound })
    const out = join(cwd, 'out')
    mkdirSync(out)
    await undercroft(['issue', 'roof.md', '--out', 'once'], { cwd })
    const size = Math.ceil(readFileSync(join(cwd, 'once/roof.html')).length / 4096) * 4096 + 3 * 4096
    try {
      execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${size}`, 'tmpfs', out], { stdio: 'ignore' })
    } catch {
      return context.skip('a small disk can only be mounted by root')
    }
    try {
      const { status, stderr } = await undercroft(['issue', 'roof.md', '--out', 'out'], { cwd })
      expect([status, stderr.split('\n')[0]]).toEqual([4, '`out/roof.pdf` cannot be written: the disk is full'])
      expect(readdirSync(out)).toEqual([])
    } finally {
      execFileSync('umount', [out])
    }
  })
})

describe('issue onto files that are there', () => {
  it('keeps a link and the permissions of the file it leads to', async () => {
    const cwd = folderWith({ 'roof.md': sound, 'kept.html': 'old' })
    chmodSync(join(cwd, 'kept.html'), 0o600)
    symlinkSync('kept.html', join(cwd, 'roof.html'))
    await undercroft(['issue', 'roof.md', '--html-only'], { cwd })
    expect(readFileSync(join(cwd, 'kept.html'), 'utf8')).toContain('</html>')
    expect(execFileSync('stat', ['-c', '%a %F', 'kept.html', 'roof.html'], { cwd, encoding: 'utf8' })).toBe(
      '600 regular file\n777 symbolic link\n',
    )
  })

  it('puts no file in place of a pipe or a device', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    execFileSync('mkfifo', ['roof.html'], { cwd })
    const { status, stderr } = await undercroft(['issue', 'roof.md', '--html-only'], { cwd })
    expect([status, stderr]).toEqual([
      4,
      expect.stringMatching(/^`roof\.html` cannot be written: it is a device or a pipe/),
    ])
    expect(readdirSync(cwd).sort()).toEqual(['roof.html', 'roof.md'])
  })
})

describe('issue with characters that no font of the package has', () => {
  it('names file, line and characters, of the notebook and of its checking record', async () => {
    const cwd = folderWith({
      'roof.md': sound.replace('# Roof', '# Roof Ж'),
      'roof.checked.yaml': 'strip:\n  - { comment: M, by: 李 伟, on: 2026-03-04, says: Why? }\n',
    })
    const lines = async () => (await undercroft(['issue', 'roof.md'], { cwd })).stderr.split('\n')
    expect((await lines()).slice(0, 2)).toEqual([
      "No PDF was written: characters fell to fonts that are not the package's own: `OpenSans-Regular` for `Ж`, `OpenSans-Bold` for `Ж`",
      `roof.md:${sound.split('\n').indexOf('# Roof') + 1}  \`Ж\``,
    ])
    writeFileSync(join(cwd, 'roof.md'), sound)
    const [says, place, help] = await lines()
    expect(says).toMatch(/^No PDF was written: \d+ characters are in none of the fonts, perhaps `李` `伟`$/)
    expect(place).toBe('roof.checked.yaml:2  `李` `伟`')
    expect(help).toMatch(/^Write these characters another way/)
  })
})
