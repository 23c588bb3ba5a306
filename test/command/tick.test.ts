import { execFileSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { folderWith } from './notebooks.ts'
import { undercroft } from './run-undercroft.ts'

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
    expect(html).toMatch(/<tr><td><a href="#[^"]+">1\.02<\/a><\/td>.*?<td>inputs<\/td>/)
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
