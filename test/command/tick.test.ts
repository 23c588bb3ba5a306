import { execFileSync, spawnSync } from 'node:child_process'
import { chmodSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { holderText, type LockHolder, thisHolder } from '../../src/command/lock-holder.ts'
import { folderWith } from './notebooks.ts'
import { plainUser, undercroft } from './run-undercroft.ts'

const notebook = (depth: string) => `---
title: Trial
prepared: M. Aird, Tarn & Aird
---

\`\`\`assume site
water: ${depth}
\`\`\`

\`\`\`work thrust
u = site.water * 10 kN/m^3 to kPa
u <= 40 kPa
\`\`\`

\`\`\`work rest
half = site.water / 2
\`\`\`
`

const tick = async (cwd: string, ...args: string[]) => undercroft(['tick', 'a.md', ...args], { cwd })
const by = (name: string) => ['--by', name, '--on', '2026-03-04']

describe('tick', () => {
  it('ticks, tells what stands, and after a change what fell', async () => {
    const cwd = folderWith({ 'a.md': notebook('2 m') })
    const first = await tick(cwd, 'thrust', 'rest.half', ...by('J. Okonedo'))
    expect([first.status, first.stdout]).toEqual([0, '3 steps ticked; 3 of 3 checked, 0 fallen, 0 open\n'])
    writeFileSync(join(cwd, 'a.md'), notebook('2.5 m'))
    const { stdout } = await tick(cwd)
    expect(stdout).toContain('0 of 3 steps checked, 3 fallen, 0 open comments')
    expect(stdout).toMatch(/1\.01 +thrust\.u +20\.00 kPa +25\.00 kPa +inputs, result +J\. Okonedo, 2026-03-04/)
    const data = JSON.parse((await tick(cwd, '--format', 'json')).stdout)
    expect(data.steps.map((step: { state: string }) => step.state)).toEqual(['fallen', 'fallen', 'fallen'])
  })

  it('keeps a record apart for each of two notebooks that differ only in their ending', async () => {
    const cwd = folderWith({ 'a.md': notebook('2 m'), 'a.markdown': notebook('3 m') })
    expect((await tick(cwd, 'rest', ...by('J. Okonedo'))).status).toBe(0)
    expect((await undercroft(['tick', 'a.markdown', 'rest', ...by('J. Okonedo')], { cwd })).status).toBe(0)
    expect(readFileSync(join(cwd, 'a.checked.yaml'), 'utf8')).toContain('as: 1.000 m')
    expect(readFileSync(join(cwd, 'a.markdown.checked.yaml'), 'utf8')).toContain('as: 1.500 m')
    expect((await tick(cwd)).stdout).toContain('1 of 3 steps checked, 0 fallen')
  })

  it('writes nothing when it only tells', async () => {
    const cwd = folderWith({ 'a.md': notebook('2 m') })
    const { status, stderr } = await tick(cwd)
    expect([status, stderr]).toEqual([
      0,
      '`a.checked.yaml` is not there yet: `undercroft tick a.md STEP --by NAME` begins it\n',
    ])
    expect(() => readFileSync(join(cwd, 'a.checked.yaml'))).toThrow()
  })

  it.each([
    [['thrust'], 2, 'A tick is signed: give `--by NAME`\n'],
    [['thrst', ...by('A. Lund')], 2, 'No step is called `thrst`\nThe nearest is `thrust`\n'],
    [['thrust', '--by', 'A. Lund', '--on', 'monday'], 2, '`--on` takes a date as 2026-03-04, not `monday`\n'],
    [['thrust', ...by('A. Lund'), '--settle', 'done'], 2, 'No comment is open at these steps\n'],
    [
      ['thrust', ...by('A. Lund'), '--remove', '--comment', 'x'],
      2,
      'Give one of `--remove`, `--comment` and `--settle`\n',
    ],
    [['thrust', ...by('A. Lund'), '--on', '2026-02-30'], 2, /not `2026-02-30`\n$/],
    [['thrust', ...by('A\nLund')], 2, '`--by` is a name in one line, of characters that can be printed\n'],
    [['thrust', ...by('A\u001b[31m Lund')], 2, '`--by` is a name in one line, of characters that can be printed\n'],
    [['thrust', ...by('x'.repeat(300))], 2, '`--by` is a name of at most 80 characters, and this one has 300\n'],
    [['thrust', ...by('A. Lund'), '--comment', ' '], 2, '`--comment` says nothing\n'],
    [['thrust', ...by('A. Lund'), '--settle', ''], 2, '`--settle` says nothing\n'],
    [['thrust', ...by('A. Lund'), '--comment', 'a\u0007'], 2, /^`--comment` holds a character/],
    [['thrust', ...by('A. Lund'), '--remove'], 2, /^A\. Lund has no tick at these steps\n/],
    [['1.02-1.01', ...by('A. Lund')], 2, '`1.02-1.01` runs backwards\nWrite `1.01-1.02`\n'],
    [['1.01-1.09', ...by('A. Lund')], 2, /^No step is numbered `1\.09`\n/],
    [['1', ...by('A. Lund')], 2, '`1` is the number of a block\nName the block: `thrust`\n'],
    [['site.water', ...by('A. Lund')], 2, /^`site\.water` is an assumption, which has no step to tick\n/],
    [['A1', ...by('A. Lund')], 2, /^`A1` is an assumption/],
    [['--by', 'A. Lund', '--comment', 'Why?'], 2, /^`--by` and `--comment` without a step: nothing was written\n/],
    [['--remove'], 2, /^`--remove` without a step/],
    [['thrust', '--begin'], 2, /^`--begin` lays down an empty record/],
    [['thrust', ...by('m. aird')], 2, /^m\. aird prepared this package/],
  ])('refuses %j', async (args, status, stderr) => {
    const cwd = folderWith({ 'a.md': notebook('2 m') })
    const ran = await tick(cwd, ...args)
    expect(ran.status).toBe(status)
    expect(ran.stderr).toEqual(typeof stderr === 'string' ? stderr : expect.stringMatching(stderr))
  })

  it('leaves a record with faults as it is, and names the line', async () => {
    const spoilt = 'thrust:\n  - { step: u }\n'
    const cwd = folderWith({ 'a.md': notebook('2 m'), 'a.checked.yaml': spoilt })
    const { status, stderr } = await tick(cwd, 'thrust', ...by('A. Lund'))
    expect([status, stderr]).toEqual([1, expect.stringMatching(/^a\.checked\.yaml:2 {2}`by` is missing here\n/)])
    expect(readFileSync(join(cwd, 'a.checked.yaml'), 'utf8')).toBe(spoilt)
  })

  it.each([
    [
      'that a merge left in two',
      'thrust:\n<<<<<<< HEAD\n=======\n>>>>>>> b\n',
      /^a\.checked\.yaml:2 {2}A merge left two versions/,
    ],
    ['that is cut short', 'thrust:\n  - { step: u, by: "A', /^a\.checked\.yaml:2 {2}[^\n]*\nMend/],
    ['of two documents', 'thrust:\n---\nrest:\n', /^a\.checked\.yaml:2 {2}A second document begins here/],
    [
      'with a map that is not closed',
      'thrust:\n  - { step: u, by: A\n',
      /^a\.checked\.yaml:\d {2}What is opened .* `}`/,
    ],
    ['with a line that is no entry', 'thrust:\nrest\n', /^a\.checked\.yaml:2 {2}This line is no entry .*\nMend/],
    ['with a block twice', 'thrust:\nthrust:\n', /^a\.checked\.yaml:\d {2}`thrust` stands here twice\nMend/],
    [
      'that is no text',
      Buffer.from([0x0a, 0x74, 0xe9, 0x3a]),
      /^a\.checked\.yaml:2 {2}Here is no UTF-8 text, which a record is\nMend/,
    ],
    ['on a day that there is not', `thrust:\n  - { comment: u, by: x, on: 2026-02-30, says: y }\n`, /not `2026-02-30`/],
    ['nested too deep', `thrust: ${'['.repeat(100_000)}`, /^a\.checked\.yaml:1 {2}[^\n]*\nMend/],
  ])('says one thing of a record %s, and leaves it', async (_, spoilt, says) => {
    const cwd = folderWith({ 'a.md': notebook('2 m'), 'a.checked.yaml': spoilt })
    for (const args of [['thrust', ...by('A. Lund')], []]) {
      const { status, stderr } = await tick(cwd, ...args)
      expect([status, stderr]).toEqual([1, expect.stringMatching(says)])
    }
    expect(readFileSync(join(cwd, 'a.checked.yaml'))).toEqual(Buffer.from(spoilt))
  })

  it('refuses a record that is larger than any', async () => {
    const cwd = folderWith({ 'a.md': notebook('2 m'), 'a.checked.yaml': Buffer.alloc(9_000_000, '#') })
    const { status, stderr } = await tick(cwd)
    expect([status, stderr]).toEqual([
      2,
      '`a.checked.yaml` has more than 8 MB, and a checking record is never as large\n',
    ])
  })

  it('keeps every tick of several runs at once', async () => {
    const cwd = folderWith({ 'a.md': notebook('2 m') })
    const names = ['A', 'B', 'C', 'D', 'E']
    const runs = await Promise.all(names.map(name => tick(cwd, 'thrust.u', ...by(name))))
    expect(runs.map(({ status }) => status)).toEqual(names.map(() => 0))
    const text = readFileSync(join(cwd, 'a.checked.yaml'), 'utf8')
    expect([...text.matchAll(/by: (\w)/g)].map(([, name]) => name).sort()).toEqual(names)
    expect(readdirSync(cwd).sort()).toEqual(['a.checked.yaml', 'a.md'])
  })

  it('waits for another run and then says what is in the way', { timeout: 20_000 }, async () => {
    const cwd = folderWith({ 'a.md': notebook('2 m'), 'a.checked.yaml.lock': '' })
    const { status, stderr } = await tick(cwd, 'thrust', ...by('A. Lund'))
    expect([status, stderr]).toEqual([
      4,
      '`a.checked.yaml.lock` is there: another run is writing `a.checked.yaml`\nWhere none is running, delete `a.checked.yaml.lock`\n',
    ])
    expect(readdirSync(cwd).sort()).toEqual(['a.checked.yaml.lock', 'a.md'])
  })

  describe('the lock of another run', () => {
    const lockOf = (holder: LockHolder) => ({ 'a.md': notebook('2 m'), 'a.checked.yaml.lock': holderText(holder) })
    /** A number that no process has any more. */
    const ended = () => spawnSync(process.execPath, ['--version']).pid

    it.each([
      ['that was killed', async () => ({ ...(await thisHolder()), process: ended() })],
      ['whose number another process has now', async () => ({ ...(await thisHolder()), started: 'before' })],
    ])('%s is taken away', async (_, holder) => {
      const cwd = folderWith(lockOf(await holder()))
      const runs = await Promise.all(['A', 'B', 'C', 'D'].map(name => tick(cwd, 'thrust.u', ...by(name))))
      expect(runs.map(({ status }) => status)).toEqual([0, 0, 0, 0])
      const text = readFileSync(join(cwd, 'a.checked.yaml'), 'utf8')
      expect([...text.matchAll(/by: (\w)/g)].map(([, name]) => name).sort()).toEqual(['A', 'B', 'C', 'D'])
      expect(readdirSync(cwd).sort()).toEqual(['a.checked.yaml', 'a.md'])
    })

    it('that was killed is left to the run that is taking it away', { timeout: 20_000 }, async () => {
      const dead = lockOf({ ...(await thisHolder()), process: ended() })
      const cwd = folderWith({ ...dead, 'a.checked.yaml.lock.break': '' })
      expect((await tick(cwd, 'thrust', ...by('A. Lund'))).status).toBe(4)
      expect(readdirSync(cwd).sort()).toEqual(['a.checked.yaml.lock', 'a.checked.yaml.lock.break', 'a.md'])
    })

    it.each([
      ['that runs', async () => thisHolder()],
      ['on another machine', async () => ({ ...(await thisHolder()), process: ended(), place: 'elsewhere 1 2' })],
    ])('%s is waited for, and named', { timeout: 20_000 }, async (_, holder) => {
      const own = await holder()
      const cwd = folderWith(lockOf(own))
      const { status, stderr } = await tick(cwd, 'thrust', ...by('A. Lund'))
      expect([status, stderr.split('\n')[0]]).toEqual([
        4,
        `\`a.checked.yaml.lock\` is there: another run (process ${own.process} on ${own.place.split(' ')[0]}) is writing \`a.checked.yaml\``,
      ])
      expect(readdirSync(cwd).sort()).toEqual(['a.checked.yaml.lock', 'a.md'])
    })
  })

  it('waits for no record that is a pipe', async () => {
    const cwd = folderWith({ 'a.md': notebook('2 m') })
    execFileSync('mkfifo', ['a.checked.yaml'], { cwd })
    for (const run of [tick(cwd), undercroft(['issue', 'a.md', '--html-only'], { cwd })])
      expect(await run).toMatchObject({
        status: 2,
        stderr: '`a.checked.yaml` cannot be read: it is a named pipe, and a file is needed here\n',
      })
  })

  it('writes over no record that is read-only', async context => {
    const user = await plainUser()
    if (!user) return context.skip()
    const cwd = folderWith({ 'a.md': notebook('2 m'), 'a.checked.yaml': '' })
    chmodSync(cwd, 0o777)
    chmodSync(join(cwd, 'a.checked.yaml'), 0o444)
    const { status, stderr } = await undercroft(['tick', 'a.md', 'thrust', ...by('A. Lund')], { cwd, ...user })
    expect([status, stderr]).toEqual([4, expect.stringMatching(/^`a\.checked\.yaml` cannot be written: access/)])
    expect(readFileSync(join(cwd, 'a.checked.yaml'), 'utf8')).toBe('')
  })

  it('keeps what was written into the record by hand', async () => {
    const cwd = folderWith({ 'a.md': notebook('2 m') })
    await tick(cwd, 'thrust', ...by('A. Lund'))
    const path = join(cwd, 'a.checked.yaml')
    const text = readFileSync(path, 'utf8')
    writeFileSync(
      path,
      text.replace('thrust:', '# Of the wall\nthrust: # in two sittings').replace(/(step: u,.*)/, '$1 # twice'),
    )
    await tick(cwd, 'thrust', 'rest', ...by('A. Lund'))
    await tick(cwd, 'thrust', ...by('J. Okonedo'), '--comment', 'Two\nlines\u00a0– “so”')
    const after = readFileSync(path, 'utf8')
    for (const line of ['# Of the wall\n', ' # in two sittings', '# twice\n']) expect(after).toContain(line)
    expect(after.match(/#/g)).toHaveLength(5)
    expect(after).toMatch(/thrust:\n {2}# in two sittings\n {2}# twice\n {2}- \{ step: u, /)
    expect((await tick(cwd)).stdout).toContain('J. Okonedo, 2026-03-04: Two lines – “so”')
  })

  it('obeys no text of a record that would steer the terminal', async () => {
    const entry = `thrust:\n  - comment: u\n    by: x\n    on: 2026-03-04\n    says: "a\\e[31mb\\nc"\n`
    const cwd = folderWith({ 'a.md': notebook('2 m'), 'a.checked.yaml': entry })
    expect((await tick(cwd)).stdout).toContain('a␛[31mb c')
  })

  it('ticks nothing in a notebook with errors', async () => {
    const cwd = folderWith({ 'a.md': notebook('2 parsec') })
    const { status, stderr } = await tick(cwd, 'thrust', ...by('A. Lund'))
    expect([status, stderr]).toEqual([1, expect.stringContaining('Nothing was ticked')])
  })

  it('lays down a record with a place for each block, once', async () => {
    const cwd = folderWith({ 'a.md': notebook('2 m') })
    expect((await tick(cwd, '--begin')).status).toBe(0)
    expect(readFileSync(join(cwd, 'a.checked.yaml'), 'utf8')).toMatch(/\nthrust:\n\nrest:\n$/)
    expect((await tick(cwd, '--begin')).status).toBe(4)
  })

  it('stands in the package: initials at the steps, the count on the cover, what fell and what was asked; and prove knows it', async () => {
    const cwd = folderWith({ 'a.md': notebook('2 m') })
    await tick(cwd, 'thrust', ...by('J. Okonedo'))
    await tick(cwd, 'rest.half', ...by('A. Lund'), '--comment', 'Why half?')
    writeFileSync(join(cwd, 'a.md'), notebook('2 m').replace('10 kN', '9.81 kN'))
    await tick(cwd, 'thrust.u', ...by('A. Lund'))
    expect((await undercroft(['issue', 'a.md', '--html-only'], { cwd })).status).toBe(0)
    const html = readFileSync(join(cwd, 'a.html'), 'utf8')
    expect(html).toContain('1 of 3 steps checked, 1 fallen; 1 comment open')
    expect(html).toMatch(/aria-label="ticked by AL"[^>]*>AL</)
    expect(html).toMatch(/<s class="initials" aria-label="fallen tick of JO">JO<\/s>/)
    expect(html).toMatch(
      /<p class="comment"><a href="#comment-C1">C1<\/a> A\. Lund, 2026-03-04: Why half\? <b>Open\.<\/b>/,
    )
    expect(html).toMatch(/<tr><td><a href="#[^"]+">1\.02<\/a><\/td>.*?<td>inputs, result<\/td>/)
    const proved = await undercroft(['prove', 'a.html'], { cwd })
    expect([proved.status, proved.stdout]).toEqual([0, expect.stringContaining('byte for byte')])
  })

  it('carries ticks to the new name of a block, says so, and marks them in record and package', async () => {
    const cwd = folderWith({ 'a.md': notebook('2 m') })
    await tick(cwd, 'thrust', ...by('J. Okonedo'))
    writeFileSync(join(cwd, 'a.md'), notebook('2 m').replace('work thrust', 'work push'))
    const told = await tick(cwd)
    expect(told.stdout).toContain('2 of 3 steps checked, 0 fallen')
    expect(told.stdout).toContain('Renamed blocks\npush was thrust: 2 steps ticked there, printed the same here\n')
    expect(readFileSync(join(cwd, 'a.checked.yaml'), 'utf8')).toContain('\nthrust:\n')
    const { stdout } = await tick(cwd, 'rest', ...by('A. Lund'))
    expect(stdout).toBe(
      '1 step ticked; 3 of 3 checked, 0 fallen, 0 open\n`thrust` is called `push` now: its ticks stand there at 2 steps, marked `from: thrust`\n',
    )
    const text = readFileSync(join(cwd, 'a.checked.yaml'), 'utf8')
    expect(text).toMatch(/\npush:\n {2}- \{ step: u, from: thrust, by: J\. Okonedo, /)
    expect(text).not.toContain('\nthrust:')
    writeFileSync(join(cwd, 'a.checked.yaml'), text.replace('push:', 'thrust:').replaceAll('from: thrust, ', ''))
    expect((await tick(cwd, 'push', '--remove', ...by('J. Okonedo'))).stdout).toBe(
      '2 steps unticked; 1 of 3 checked, 0 fallen, 0 open\n',
    )
    writeFileSync(join(cwd, 'a.checked.yaml'), text)
    await undercroft(['issue', 'a.md', '--html-only'], { cwd })
    const html = readFileSync(join(cwd, 'a.html'), 'utf8').replace(/<[^>]+>/g, '')
    expect(html).toContain(
      'Stand from before a block was renamed, push from thrust, each step printed as it was: 1.01, 1.02.',
    )
    const proved = await undercroft(['prove', 'a.html'], { cwd })
    expect([proved.status, proved.stdout]).toEqual([0, expect.stringContaining('byte for byte')])
  })

  it('leaves a package without ticks as it is', async () => {
    const cwd = folderWith({ 'a.md': notebook('2 m') })
    await undercroft(['issue', 'a.md', '--html-only'], { cwd })
    const bare = readFileSync(join(cwd, 'a.html'), 'utf8')
    expect(bare).not.toContain('Checking record')
  })

  it('lets two checkers tick different blocks on two branches, which git merges without conflict', async () => {
    const cwd = folderWith({ 'a.md': notebook('2 m') })
    const git = (...args: string[]) =>
      execFileSync('git', ['-c', 'user.name=T', '-c', 'user.email=t@example.org', ...args], {
        cwd,
        encoding: 'utf8',
        stdio: 'pipe',
      })
    git('init', '-q', '-b', 'main')
    await tick(cwd, '--begin')
    git('add', '.')
    git('commit', '-qm', 'Begin')
    git('switch', '-qc', 'first')
    await tick(cwd, 'thrust', ...by('J. Okonedo'))
    git('commit', '-qam', 'Tick thrust')
    git('switch', '-qc', 'second', 'main')
    await tick(cwd, 'rest', ...by('A. Lund'))
    git('commit', '-qam', 'Tick rest')
    git('merge', '-q', 'first', '-m', 'Merge')
    const { stdout } = await tick(cwd)
    expect(stdout).toContain('3 of 3 steps checked, 0 fallen')
    expect(stdout).toMatch(/thrust .*J\. Okonedo\n.*rest .*A\. Lund/)
  })
})
