import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { starters } from '../../src/command/starters.ts'
import { folderWith } from './notebooks.ts'
import { pageTexts } from './pdf-text.ts'
import { undercroft } from './run-undercroft.ts'

describe('start', () => {
  it('lays down a notebook that issues as it stands, without a warning', async () => {
    const cwd = folderWith()
    const { status, stdout } = await undercroft(['start', 'shelter'], { cwd })
    expect([status, stdout]).toEqual([0, 'Wrote shelter/shelter.md\n'])
    const issued = await undercroft(['issue', 'shelter/shelter.md'], { cwd })
    expect([issued.status, issued.stderr]).toEqual([0, ''])
    expect((await pageTexts(join(cwd, 'shelter/shelter.pdf'))).length).toBeGreaterThan(3)
  })

  it.each(Object.keys(starters))(
    'the template %s evaluates with every check satisfied and without a warning',
    async template => {
      const cwd = folderWith()
      const { status, stdout } = await undercroft(['start', '--template', template], { cwd })
      expect(status).toBe(0)
      const file = /^Wrote (\S+)$/m.exec(stdout)?.[1] ?? ''
      expect(await undercroft(['check', file], { cwd })).toMatchObject({ status: 0, stderr: '' })
    },
  )

  it('refuses a template that is not there, and names those that are', async () => {
    const { status, stderr } = await undercroft(['start', '--template', 'boks'], { cwd: folderWith() })
    expect(status).toBe(2)
    for (const name of Object.keys(starters)) expect(stderr).toContain(name)
  })

  it('says the two commands that come next, and both run', async () => {
    const cwd = folderWith()
    const { stderr } = await undercroft(['start'], { cwd })
    const next = [...stderr.matchAll(/undercroft (check|issue) (\S+)/g)]
    expect(next.length).toBe(2)
    for (const [, name = '', file = ''] of next) expect((await undercroft([name, file], { cwd })).status).toBe(0)
  })

  it('writes over nothing, and ends with 4', async () => {
    const cwd = folderWith({ 'shelter.md': 'mine' })
    const { status, stderr } = await undercroft(['start'], { cwd })
    expect([status, stderr]).toEqual([4, '`shelter.md` is there already\nName another folder, or move the file away\n'])
    expect([readdirSync(cwd), readFileSync(join(cwd, 'shelter.md'), 'utf8')]).toEqual([['shelter.md'], 'mine'])
  })

  it('refuses a file where the folder should be', async () => {
    const cwd = folderWith()
    mkdirSync(join(cwd, 'a'))
    writeFileSync(join(cwd, 'a/file'), 'mine')
    const { status, stderr } = await undercroft(['start', 'a/file'], { cwd })
    expect(status).toBe(4)
    expect(stderr).toMatch(/^`a\/file\/shelter\.md` cannot be written: /)
    expect(readFileSync(join(cwd, 'a/file'), 'utf8')).toBe('mine')
  })
})
