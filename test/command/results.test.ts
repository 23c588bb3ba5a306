import { createHash } from 'node:crypto'
import { openSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { failing, faulty, folderWith, sound } from './notebooks.ts'
import { undercroft } from './run-undercroft.ts'

describe('results', () => {
  it('gives every value as JSON: SI at full precision, and as the package shows it', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { status, stdout, stderr } = await undercroft(['results', 'roof.md'], { cwd })
    expect([status, stderr]).toEqual([0, ''])
    const data = JSON.parse(stdout)
    expect(data).toMatchObject({
      format: 1,
      tool: 'undercroft 0.1.0',
      notebook: { path: 'roof.md', title: 'Roof of the store' },
    })
    expect(data.notebook.sha256).toBe(createHash('sha256').update(sound).digest('hex'))
    const strip = data.blocks.find(({ name }: { name: string }) => name === 'strip')
    expect(strip.outputs.M).toMatchObject({ si: 22500, shown: '22.50', unit: 'kN', step: '1.01' })
    expect(strip.checks[0]).toMatchObject({ satisfied: true, ratio: 0.5625 })
  })

  it('leaves out what could not be evaluated, explains it on standard error, and ends with 1', async () => {
    const cwd = folderWith({ 'roof.md': faulty })
    const { status, stdout, stderr } = await undercroft(['results', 'roof.md'], { cwd })
    expect(status).toBe(1)
    expect(stderr).toContain('name-unknown')
    expect(stdout).not.toMatch(/\bnull\b|NaN|Infinity/)
    const { blocks, diagnostics } = JSON.parse(stdout)
    expect(blocks.flatMap(({ outputs }: { outputs?: object }) => Object.keys(outputs ?? {}))).not.toContain('M')
    expect(diagnostics).toMatchObject([{ rule: 'name-unknown', severity: 'error' }])
  })

  it('gives a table, reads standard input, and ends with 3 for a check that is not satisfied', async () => {
    const { status, stdout } = await undercroft(['results', '-', '--format', 'table'], {
      cwd: folderWith(),
      input: failing,
    })
    expect(status).toBe(3)
    expect(stdout).toMatch(/^1\.01 +strip\.M +62\.50 kN +moment of a strip$/m)
  })

  it('says that the answer is lost on a full disk, and ends with 4', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const full = openSync('/dev/full', 'w')
    const { status, stderr } = await undercroft(['results', 'roof.md'], { cwd, stdio: ['ignore', full, 'pipe'] })
    expect([status, stderr]).toEqual([4, 'The answer cannot be printed: the disk is full\n'])
  })
})
