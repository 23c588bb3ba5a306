import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { faulty, folderWith, sound } from './notebooks.ts'
import { undercroft } from './run-undercroft.ts'

const drawn = `${sound}
\`\`\`calc levels levels
cover: 1.2 m
cover_required: 1.0 m
roof: 350 mm
clear: 2.4 m
raft: 350 mm
water_depth: 8 m
\`\`\`
`

describe('schedules', () => {
  it('lists what there is, prints one, and writes each to a file', async () => {
    const cwd = folderWith({ 'roof.md': drawn })
    const listed = await undercroft(['schedules', 'roof.md'], { cwd })
    expect(listed.stdout).toMatch(/^drawing-values +\d+ +Values for the drawings$/m)
    const { status, stdout } = await undercroft(['schedules', 'roof.md', 'drawing-values'], { cwd })
    expect(status).toBe(0)
    expect(stdout.split('\r\n').slice(0, 2)).toEqual([
      'calculation,block,value,meaning,amount,unit',
      '2,levels,cover,earth cover above the roof slab and its topping,1.2,m',
    ])
    expect((await undercroft(['schedules', 'roof.md', '--out', 'out'], { cwd })).status).toBe(0)
    expect(readFileSync(join(cwd, 'out', 'roof.drawing-values.csv'), 'utf8')).toBe(stdout)
  })

  it('says so where there are none', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    for (const more of [[], ['--out', 'out']]) {
      const { status, stdout, stderr } = await undercroft(['schedules', 'roof.md', ...more], { cwd })
      expect([status, stdout]).toEqual([0, ''])
      expect(stderr).toContain('The notebook has no schedules')
    }
  })

  it('gives nothing from a notebook with errors, and names the nearest where there is no such schedule', async () => {
    const cwd = folderWith({ 'roof.md': drawn, 'faulty.md': faulty })
    const none = await undercroft(['schedules', 'faulty.md'], { cwd })
    expect([none.status, none.stdout]).toEqual([1, ''])
    const wrong = await undercroft(['schedules', 'roof.md', 'drawing-value'], { cwd })
    expect(wrong.status).toBe(2)
    expect(wrong.stderr).toContain('Did you mean `drawing-values`?')
  })
})
