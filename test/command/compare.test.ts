import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { repository } from '../comparison/repository.ts'
import { deep, failing, faulty, folderWith, sound } from './notebooks.ts'
import { undercroft } from './run-undercroft.ts'

const loaded = sound.replace('value: 20 kN/m^2', 'value: 40 kN/m^2')

describe('compare: two files', () => {
  it('says which assumption changed, by how much, and which check turned, before anything else', async () => {
    const cwd = folderWith({ 'old.md': sound, 'new.md': failing })
    const { status, stdout, stderr } = await undercroft(['compare', 'old.md', 'new.md'], { cwd })
    expect([status, stderr]).toEqual([3, ''])
    expect(stdout.split('\n').slice(0, 12)).toEqual([
      'Roof of the store',
      'old  old.md',
      'new  new.md',
      '',
      'Assumptions (1)',
      '  site.span                     3 m → 5 m   +2 m, +67 %',
      '',
      'Turned',
      '  NOT SATISFIED 1.02            strip: what the slab carries',
      '                                ratio 0.563 → 1.56',
      '                                by site.span',
      '  1 of 1 check not satisfied in the new notebook',
    ])
    expect(stdout).toContain(
      'To check again: 2 of 2 lines differ, 0 more rest on a change and print the same, 0 rest on',
    )
    expect(stdout).toMatch(/^ {2}1\.01 {2}strip\.M {2}22\.50 kN {2}62\.50 kN {2}\+178 % {2}site\.span$/m)
  })

  it('ends with 0 whatever moved, while the checks of the new one are satisfied', async () => {
    const cwd = folderWith({ 'old.md': failing, 'new.md': sound })
    const { status, stdout } = await undercroft(['compare', 'old.md', 'new.md'], { cwd })
    expect(status).toBe(0)
    expect(stdout).toContain('satisfied now 1.02')
  })

  it('says that nothing changed in meaning, and what is written otherwise', async () => {
    const cwd = folderWith({ 'old.md': sound, 'new.md': sound.replace('3 m', '3000 mm') })
    const { status, stdout } = await undercroft(['compare', 'old.md', 'new.md'], { cwd })
    expect(status).toBe(0)
    expect(stdout).toContain('Nothing changed in meaning')
    expect(stdout).toContain('No change of meaning\n  the same in another unit or form: site.span')
  })

  it('errors of the new notebook are its own, with 1; those of the old one are said in a line', async () => {
    const cwd = folderWith({ 'sound.md': sound, 'faulty.md': faulty })
    const now = await undercroft(['compare', 'sound.md', 'faulty.md'], { cwd })
    expect(now.status).toBe(1)
    expect(now.stderr).toContain('spam')
    expect(now.stdout).toContain('The new notebook has 1 error')
    const old = await undercroft(['compare', 'faulty.md', 'sound.md'], { cwd })
    expect(old.status).toBe(0)
    expect(old.stderr).toBe('The old notebook (faulty.md) has 1 error: what they stop cannot be compared\n')
  })

  it('keeps to a hundred columns, and obeys no text that would steer the terminal', async () => {
    const long = sound.replace('basis: drawing SP-12', `basis: "${'a long account of it '.repeat(20)}\\e[31m"`)
    const cwd = folderWith({ 'old.md': sound, 'new.md': long.replace('3 m', '4 m') })
    const { stdout } = await undercroft(['compare', 'old.md', 'new.md'], { cwd })
    for (const line of stdout.split('\n')) expect(line.length, line).toBeLessThanOrEqual(100)
    expect(stdout).not.toContain('\u001b')
  })

  it('lists the results from a threshold on', async () => {
    const cwd = folderWith({ 'old.md': sound, 'new.md': sound.replace('20 kN/m^2', '20.5 kN/m^2') })
    const ran = (threshold: string) => undercroft(['compare', 'old.md', 'new.md', '--threshold', threshold], { cwd })
    expect((await ran('2')).stdout).toContain('Results that moved by 2 percent or more (1)')
    expect((await ran('3')).stdout).toContain('Results that moved by 3 percent or more (0; 1 more moved by less)')
    const wrong = await ran('some')
    expect([wrong.status, wrong.stderr]).toEqual([2, '`--threshold` is a number of percent from 0, not `some`\n'])
  })

  it('reads one side from standard input, and not both', async () => {
    const cwd = folderWith({ 'new.md': loaded })
    const { status, stdout } = await undercroft(['compare', '-', 'new.md'], { cwd, input: sound })
    expect(status).toBe(3)
    expect(stdout).toContain('old  standard input')
    expect((await undercroft(['compare', '-', '-'], { cwd, input: sound })).status).toBe(2)
  })
})

describe('compare: forms', () => {
  const cwd = () => folderWith({ 'old.md': sound, 'new.md': failing.replace('What', 'what') })

  it('as JSON: changes, checks, results, lines, and nothing that is no number', async () => {
    const { stdout } = await undercroft(['compare', 'old.md', 'new.md', '--format', 'json'], { cwd: cwd() })
    const data = JSON.parse(stdout)
    expect(data).toMatchObject({
      format: 1,
      title: 'Roof of the store',
      old: { label: 'old.md' },
      changes: [{ id: 'c1', key: 'site.span', old: '3 m', now: '5 m', step: { amount: { shown: '2', unit: 'm' } } }],
      checks: [{ turn: 'turned to not satisfied', block: 'strip', number: '1.02', moved: { together: 0 } }],
      results: [
        { key: 'strip.M', si: { old: 22500, now: 62500 }, moved: { parts: [{ changes: ['c1'], alone: 40000 }] } },
      ],
      recheck: { lines: 2, cannot: 0, unexplained: [] },
    })
    expect(data.recheck.differ.map(({ id, chain }: { id: string; chain: string[] }) => [id, chain])).toEqual([
      ['v-strip-M', ['site.span', 'strip.M']],
      ['b-strip-check-1-02', ['site.span', 'strip.M', 'strip']],
    ])
    expect(stdout).not.toMatch(/null|NaN|Infinity/)
  })

  it('as Markdown: the verdict in its first lines, tables, and no text that could be taken for markup', async () => {
    const odd = failing.replace('drawing SP-12', 'drawing <b>SP</b>|12')
    const folder = folderWith({ 'old.md': sound, 'new.md': odd })
    const { stdout, status } = await undercroft(['compare', 'old.md', 'new.md', '--format', 'markdown'], {
      cwd: folder,
    })
    expect(status).toBe(3)
    expect(stdout).toContain('## Roof of the store: what changed\n')
    expect(stdout).toContain('**1 check turned to not satisfied**')
    expect(stdout).toContain('| site.span | 3 m → 5 m | +2 m, +67 % |')
    expect(stdout).toContain('basis: drawing SP-12 → drawing \\<b\\>SP\\</b\\>\\|12')
    for (const block of stdout.match(/(?:^\|.*\n?)+/gm) ?? []) {
      const widths = block
        .trim()
        .split('\n')
        .map(line => line.replaceAll('\\|', '').split('|').length)
      expect(new Set(widths).size, block).toBe(1)
    }
  })
})

describe('compare: revisions of version control', () => {
  it('a revision against the file as it is now, from any folder, and leaves everything as it was', async () => {
    const { folder, write, git, commit } = repository()
    write('notes of the site/roof.md', sound)
    commit('first')
    write('notes of the site/roof.md', loaded)
    const { status, stdout } = await undercroft(['compare', 'HEAD', join('notes of the site', 'roof.md')], {
      cwd: folder,
    })
    expect(status).toBe(3)
    expect(stdout).toMatch(/^old {2}notes of the site\/roof\.md at HEAD \([0-9a-f]{10}\)$/m)
    expect(stdout).toMatch(/^new {2}notes of the site\/roof\.md as it is now$/m)
    expect(stdout).toContain('site.load                     20 kN/m^2 → 40 kN/m^2   +20 kN/m², +100 %')
    expect(git('status', '--porcelain')).toBe(' M "notes of the site/roof.md"\n')
    const outside = await undercroft(['compare', 'HEAD', join(folder, 'notes of the site', 'roof.md')], {
      cwd: folderWith(),
    })
    expect(outside.stdout).toContain('site.load')
  })

  it('two revisions, whatever the file is now; and the point where two branches parted', async () => {
    const { folder, write, git, commit } = repository()
    write('roof.md', sound)
    commit('first')
    git('tag', 'v1')
    write('roof.md', loaded)
    commit('second')
    git('tag', 'v2')
    write('roof.md', faulty)
    const two = await undercroft(['compare', 'v1..v2', 'roof.md'], { cwd: folder })
    expect(two.stdout).toContain('20 kN/m^2 → 40 kN/m^2')
    expect((await undercroft(['compare', 'v2..v1', 'roof.md'], { cwd: folder })).status).toBe(0)
    git('restore', 'roof.md')
    git('switch', '--quiet', '--create', 'work', 'v1')
    write('roof.md', failing)
    commit('third')
    const fork = await undercroft(['compare', 'main...', 'roof.md'], { cwd: folder })
    expect(fork.stdout).toContain('3 m → 5 m')
    expect(fork.stdout).not.toContain('kN/m^2 → ')
  })

  it('follows a renamed file', async () => {
    const { folder, write, git, commit } = repository()
    write('roof.md', sound)
    commit('first')
    git('mv', 'roof.md', 'store roof.md')
    write('store roof.md', loaded)
    const { stdout } = await undercroft(['compare', 'HEAD', 'store roof.md'], { cwd: folder })
    expect(stdout).toMatch(/^old {2}roof\.md at HEAD/m)
    expect(stdout).toContain('20 kN/m^2 → 40 kN/m^2')
  })

  it('says in a sentence what is wrong, with 2', async () => {
    const { folder, write, commit } = repository()
    write('roof.md', sound)
    commit('first')
    mkdirSync(join(folder, 'empty'))
    const alone = folderWith({ 'roof.md': sound })
    const cases: readonly (readonly [string, readonly string[], string])[] = [
      [folder, ['nowhere', 'roof.md'], '`nowhere` is neither a file here nor a revision of the repository'],
      [folder, ['HEAD', 'wall.md'], '`wall.md` cannot be read: there is no such file or folder'],
      [folder, ['HEAD..HEAD', 'wall.md'], '`wall.md` does not exist at '],
      [folder, ['old.md', 'roof.md'], '`old.md` cannot be read: there is no such file or folder'],
      [folder, ['HEAD', 'nowhere/roof.md'], '`nowhere/roof.md` cannot be read: there is no such file or folder'],
      [folder, ['HEAD', '-'], 'A revision of standard input cannot be found: name the file'],
      [folder, ['--', '--output=x', 'roof.md'], 'A revision cannot begin with `-`: `--output=x`'],
      [
        alone,
        ['HEAD', 'roof.md'],
        '`HEAD` is no file here, and cannot be a revision: the notebook is in no repository',
      ],
    ]
    for (const [cwd, args, says] of cases) {
      const { status, stdout, stderr } = await undercroft(['compare', ...args], { cwd })
      expect([args, status, stdout]).toEqual([args, 2, ''])
      expect(stderr).toContain(says)
    }
  })

  it('reads what a link leads to, and heeds no repository that a hook of git names', async () => {
    const { folder, write, commit } = repository()
    write('sub/roof.md', sound)
    symlinkSync('sub/roof.md', join(folder, 'link.md'))
    commit('first')
    const ran = await undercroft(['compare', 'HEAD', 'link.md'], { cwd: folder, env: { GIT_DIR: '.git' } })
    expect([ran.status, ran.stderr]).toEqual([0, ''])
    expect(ran.stdout).toContain('Nothing changed in meaning')
  })

  it('says that a repository has no commit, or is shallow', async () => {
    const { folder, write, commit, git } = repository()
    write('roof.md', sound)
    const said = async (cwd: string, revision: string) =>
      (await undercroft(['compare', revision, 'roof.md'], { cwd })).stderr
    expect(await said(folder, 'HEAD')).toBe('`HEAD` is no revision: the repository has no commit yet\n')
    commit('first')
    write('roof.md', failing)
    commit('second: a longer span')
    git('clone', '-q', '--depth', '1', `file://${folder}`, 'shallow')
    expect(await said(join(folder, 'shallow'), 'HEAD~1')).toContain('The repository is shallow: `git fetch --unshallow')
    expect((await undercroft(['compare', ':/first', 'roof.md'], { cwd: folder })).stdout).toContain(
      'roof.md at :/first (',
    )
    expect(await said(folder, '')).toContain('No revision is named')
  })

  it('says of checks that are satisfied which of them are in doubt', async () => {
    const shallow = deep.replace('600 mm', '400 mm').replace('required_factor: 100', 'required_factor: 10')
    const cwd = folderWith({ 'a.md': shallow, 'b.md': deep.replace('required_factor: 100', 'required_factor: 10') })
    const { stdout } = await undercroft(['compare', 'a.md', 'b.md'], { cwd })
    expect(stdout).toMatch(/every check that was reached is satisfied \(\d\), \d of them in doubt: outside limits/)
    const data = JSON.parse((await undercroft(['compare', 'a.md', 'b.md', '--format', 'json'], { cwd })).stdout)
    expect(data.checks[0].now.doubts).toContain('outside limits')
    const issue = ['issue', 'b.md', '--html-only', '--since', 'a.md']
    expect((await undercroft(issue, { cwd })).status).toBe(0)
    expect(readFileSync(join(cwd, 'b.html'), 'utf8')).toMatch(/<b>IN DOUBT: outside limits/)
  })

  it('takes an issued package for the old one, and says which modules were of another version', async () => {
    const cwd = folderWith({ 'a.md': deep })
    await undercroft(['issue', 'a.md', '--html-only'], { cwd })
    const html = readFileSync(join(cwd, 'a.html'), 'utf8')
    const same = await undercroft(['compare', 'a.html', 'a.md'], { cwd })
    expect([same.status, same.stderr]).toEqual([0, ''])
    expect(same.stdout.split('\n').slice(1, 5)).toEqual(['old  a.html', 'new  a.md', '', 'Nothing changed in meaning'])
    const older = html.replace(
      /(href="data:application\/json;base64,)([^"]*)(" download="results\.json")/,
      (_, head: string, data: string, tail: string) => {
        const text = Buffer.from(data, 'base64').toString('utf8')
        const changed = text
          .replace(/"tool": "undercroft [^"]*"/, '"tool": "undercroft 0.0.9"')
          .replace(/("module": "halving-layers",\s*"version": )"[^"]*"/, '$1"0.9.0"')
          .replace(/("satisfied": )true/, '$1false')
        return `${head}${Buffer.from(changed).toString('base64')}${tail}`
      },
    )
    writeFileSync(join(cwd, 'older.html'), older)
    const said = [
      /The old package was issued by undercroft 0\.0\.9, and this is undercroft \S+/,
      /Module `halving-layers` was version 0\.9\.0 in the old package and is [\d.]+ now: shield/,
      /This program gives 1 other results? for its notebook: `undercroft prove older\.html` lists/,
    ]
    const { stdout } = await undercroft(['compare', 'older.html', 'a.md'], { cwd })
    const markdown = await undercroft(['compare', 'older.html', 'a.md', '--format', 'markdown'], { cwd })
    const issue = await undercroft(['issue', 'a.md', '--html-only', '--since', 'older.html'], { cwd })
    for (const words of said) {
      expect(stdout).toMatch(words)
      expect(markdown.stdout.replaceAll('\\', '')).toMatch(words)
      expect(issue.stderr).toMatch(words)
    }
    expect(readFileSync(join(cwd, 'a.html'), 'utf8')).toMatch(/<b>Module halving-layers was version 0\.9\.0/)
    expect((await undercroft(['prove', 'a.html'], { cwd })).status).toBe(0)
  })

  it('says where there is no git program', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    writeFileSync(join(cwd, 'empty'), '')
    const { status, stderr } = await undercroft(['compare', 'HEAD', 'roof.md'], { cwd, env: { PATH: cwd } })
    expect(status).toBe(2)
    expect(stderr).toContain('To read a revision the `git` program is needed, and it is not found')
  })
})
