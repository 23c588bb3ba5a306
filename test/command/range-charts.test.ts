import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { folderWith, sound } from './notebooks.ts'
import { undercroft } from './run-undercroft.ts'

const ranged = (asked: string): string =>
  sound
    .replace('number: SP-C-020', `number: SP-C-020\nranges: ${asked}`)
    .replace('load: { value: 20 kN/m^2,', 'load: { value: 20 kN/m^2, range: 15 kN/m^2 to 28 kN/m^2,')

async function issued(asked: string) {
  const cwd = folderWith({ 'a.md': ranged(asked) })
  const ran = await undercroft(['issue', 'a.md', '--html-only'], { cwd })
  return { ...ran, html: () => readFileSync(join(cwd, 'a.html'), 'utf8') }
}

describe('charts over the ranges', () => {
  it('stand in the package where the title block asks for them, with their text alternative', async () => {
    const { status, html } = await issued('[strip.M, sections]')
    expect(status).toBe(0)
    const [first = '', second = ''] = html().match(/<figure class="range-chart">[\s\S]*?<\/figure>/g) ?? []
    expect(first).toContain('strip.M is 22.5')
    expect(first).toContain('site.load')
    expect(second).toContain('largest ratio')
  })

  it('are left out where it asks for none', async () => {
    const { html } = await issued('[]')
    expect(html().includes('Effect of the ranges')).toBe(false)
  })

  it('refuses a name that nothing has, with the nearest', async () => {
    const { status, stderr } = await issued('[strip.N]')
    expect([status, stderr]).toEqual([
      1,
      '`ranges` in the title block: nothing is called `strip.N`\nThe nearest is `strip.M`\n',
    ])
  })
})
