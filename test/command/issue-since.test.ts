import { execFileSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { faulty, folderWith, sound } from './notebooks.ts'
import { undercroft } from './run-undercroft.ts'

const changed = sound.replace('load: { value: 20 kN/m^2', 'load: { value: 30 kN/m^2')

/** A repository whose tag A has the sound notebook, and whose working copy has another. */
function repository(now: string): string {
  const cwd = folderWith({ 'roof.md': sound })
  const git = (...args: string[]) =>
    execFileSync('git', ['-c', 'user.name=T', '-c', 'user.email=t@example.org', ...args], { cwd, stdio: 'pipe' })
  git('init', '-q', '-b', 'main')
  git('add', '.')
  git('commit', '-qm', 'Issue A')
  git('tag', 'A')
  writeFileSync(join(cwd, 'roof.md'), now)
  return cwd
}

async function issued(cwd: string, ...args: string[]): Promise<string> {
  const { status, stderr } = await undercroft(['issue', 'roof.md', '--html-only', ...args], { cwd })
  expect([status, stderr]).toEqual([expect.any(Number), stderr])
  return readFileSync(join(cwd, 'roof.html'), 'utf8')
}

const barred = (html: string): string[] => [
  ...new Set([...html.matchAll(/\[id="([^"]+)"\]/g)].map(found => found[1] ?? '')),
]

describe('issue --since', () => {
  it('lists the changed assumption, what it moved and what must be checked again, and marks it', async () => {
    const html = await issued(repository(changed), '--since', 'A')
    expect(/<h2>Changes since A \([0-9a-f]{10}\)<\/h2>/.test(html)).toBe(true)
    expect(
      /<a href="#[^"]+">site\.load<\/a><\/td><td>20 kN\/m<sup>2<\/sup> → 30 kN\/m<sup>2<\/sup><\/td><td>\+10 kN\/m<sup>2<\/sup>, \+50 %<\/td>/.test(
        html,
      ),
    ).toBe(true)
    expect(/<td class="number">0\.563<\/td><td class="number">0\.844<\/td><td>site\.load<\/td>/.test(html)).toBe(true)
    expect(html.includes('2 of 2 lines differ, 0 more rest on a change and print the same')).toBe(true)
    for (const id of barred(html).filter(id => !id.startsWith('register-')))
      expect(html.includes(`id="${id}"`)).toBe(true)
    expect(barred(html).length).toBeGreaterThanOrEqual(6)
  })

  it('marks nothing and says so where nothing changed in meaning', async () => {
    const html = await issued(
      repository(sound.replace('value: 3 m,', 'value: 300 cm,').replace('# moment of a strip', '#  moment of a strip')),
      '--since',
      'A',
    )
    expect(html.includes('Nothing changed in meaning.')).toBe(true)
    expect(html.includes('No check moved.')).toBe(true)
  })

  it('takes an older file as well, names it without its folder, and a check that turned stands first and in capitals', async () => {
    const cwd = folderWith({ 'roof.md': sound.replace('value: 3 m,', 'value: 5 m,'), 'old.md': sound })
    const html = await issued(cwd, '--since', join(cwd, 'old.md'))
    expect(html.includes('<h2>Changes since old.md</h2>')).toBe(true)
    expect(/<b>NOT SATISFIED<\/b>/.test(html)).toBe(true)
    expect(html.includes(cwd)).toBe(false)
  })

  it('is proved with its older notebook, which travels inside', async () => {
    const cwd = repository(changed)
    await issued(cwd, '--since', 'A')
    const { status, stdout } = await undercroft(['prove', 'roof.html'], { cwd })
    expect([status, stdout]).toEqual([0, expect.stringContaining('byte for byte')])
  })

  it('refuses two revisions, of which one would go unheeded', async () => {
    const cwd = repository(changed)
    const { status, stdout, stderr } = await undercroft(['issue', 'roof.md', '--html-only', '--since', 'A..HEAD'], {
      cwd,
    })
    expect([status, stdout]).toEqual([2, ''])
    expect(stderr).toContain('`--since` takes one revision, and `A..HEAD` is two')
    expect(stderr).toContain('Write `--since A`')
    expect(/Changes since A\.\.\. \([0-9a-f]{10}\)/.test(await issued(cwd, '--since', 'A...'))).toBe(true)
    expect(/Changes since A \([0-9a-f]{10}\)/.test(await issued(cwd, '--since', 'A..'))).toBe(true)
  })

  it('keeps the whole name of a revision', async () => {
    const cwd = repository(changed)
    execFileSync('git', ['branch', 'water/high at noon'.replaceAll(' ', '-')], { cwd, stdio: 'pipe' })
    const html = await issued(cwd, '--since', 'water/high-at-noon')
    expect(/<h2>Changes since water\/high-at-noon \([0-9a-f]{10}\)<\/h2>/.test(html)).toBe(true)
  })

  it('says where the older notebook has errors, on paper too', async () => {
    const cwd = folderWith({ 'roof.md': sound, 'old.md': faulty })
    const { status, stderr } = await undercroft(['issue', 'roof.md', '--html-only', '--since', 'old.md'], { cwd })
    const says = 'The old notebook (old.md) has 1 error: what they stop cannot be compared'
    expect([status, stderr]).toEqual([0, `${says}\n`])
    expect(readFileSync(join(cwd, 'roof.html'), 'utf8').includes(`<b>${says}.</b>`)).toBe(true)
  })

  it('refuses a revision that is not there, and writes nothing', async () => {
    const cwd = repository(changed)
    const { status, stdout } = await undercroft(['issue', 'roof.md', '--html-only', '--since', 'B'], { cwd })
    expect([status, stdout]).toEqual([2, ''])
    expect(() => readFileSync(join(cwd, 'roof.html'))).toThrow()
  })
})
