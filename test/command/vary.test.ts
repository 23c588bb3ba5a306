import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { failing, faulty, folderWith, sound } from './notebooks.ts'
import { undercroft } from './run-undercroft.ts'

describe('vary', () => {
  it('gives both margins of every assumption, the tightest first, and one sentence', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { status, stdout, stderr } = await undercroft(['vary', 'roof.md'], { cwd })
    expect([status, stderr]).toEqual([0, ''])
    expect(stdout).toMatch(/^site\.span +3 m +\+33\.3 % +0 m +nothing +4 m +1\.02$/m)
    expect(stdout).toMatch(/^site\.load +20 kN\/m² +\+77\.7 % +0 kN\/m² +nothing +35\.55 kN\/m² +1\.02$/m)
    expect(stdout.indexOf('site.span')).toBeLessThan(stdout.indexOf('site.load'))
    expect(stdout).toMatch(/^1\.02 +strip: what the slab carries$/m)
    expect(stdout.trimEnd().split('\n').at(-1)).toMatch(
      /^roof\.md: 2 assumptions, each moved by itself; tightest is site\.span, \+33\.3 % to 4 m \(what the slab carries\); no margin ends inside its range \(\d+ runs\)$/,
    )
  })

  it('gives the same as JSON, in SI at full precision', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { stdout } = await undercroft(['vary', 'roof.md', '--format', 'json'], { cwd })
    const data = JSON.parse(stdout)
    expect(data).toMatchObject({ format: 1, tool: 'undercroft 0.1.0', notebook: { path: 'roof.md' }, unsearched: [] })
    const [span, load] = data.margins
    expect(span).toMatchObject({
      assumption: 'site.span',
      searched: { from: '0 m', to: '6 m' },
      down: { kind: 'none', si: 0 },
      up: { kind: 'turn', checks: [{ number: '1.02', block: 'strip', becomes: 'not satisfied' }], insideRange: false },
    })
    expect(span.up.si).toBeCloseTo(4, 9)
    // w l^2 / 8 = 40 kN at l = 3 m.
    expect(load.up.si / 1e3).toBeCloseTo((8 * 40) / 9, 7)
  })

  it('says how far it is to being satisfied, and ends with 3 as `check` does', async () => {
    const { status, stdout } = await undercroft(['vary', '-'], { cwd: folderWith(), input: failing })
    expect(status).toBe(3)
    expect(stdout).toMatch(/^site\.span +5 m +−20\.0 % +4 m +1\.02, then satisfied +10 m +nothing$/m)
  })

  it('stands in the register of the package, its check linked', async () => {
    const cwd = folderWith({ 'roof.md': sound.replace('SP-12 }', 'SP-12, range: 2 m to 5 m }') })
    expect((await undercroft(['issue', 'roof.md', '--html-only'], { cwd })).status).toBe(0)
    const html = readFileSync(join(cwd, 'roof.html'), 'utf8')
    const row = /<tr id="register-v-site-span">.*?<\/tr>/.exec(html)?.[0] ?? ''
    const [, anchor = ''] =
      /up to 4&nbsp;m: <a href="#([^"]+)">1\.02<\/a><b class="outside"> inside the range/.exec(
        row.replaceAll('\u00a0', '&nbsp;'),
      ) ?? []
    expect(anchor).not.toBe('')
    expect(html).toContain(`id="${anchor}"`)
    expect(row).toContain('nothing')
  })

  it('varies nothing where the notebook has errors, and ends with 1', async () => {
    const cwd = folderWith({ 'roof.md': faulty })
    const { status, stdout, stderr } = await undercroft(['vary', 'roof.md'], { cwd })
    expect([status, stdout]).toEqual([1, ''])
    expect(stderr).toContain('name-unknown')
    expect(stderr).toContain('Nothing was varied: the notebook has errors')
  })
})
