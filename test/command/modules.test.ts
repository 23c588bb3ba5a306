import { spawn } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { catalogue, modulesByWing, wingOrder } from '../../src/modules/catalogue.ts'
import { wings } from '../../src/modules/ledger.ts'
import { folderWith } from './notebooks.ts'
import { command, undercroft } from './run-undercroft.ts'

describe('modules', () => {
  it('lists every module of the catalogue under its wing, with what it asks', async () => {
    const { status, stdout } = await undercroft(['modules'], { cwd: folderWith() })
    expect(status).toBe(0)
    const parts = stdout.trimEnd().split('\n\n')
    expect(parts.filter((_, index) => index % 2 === 0)).toEqual(Object.values(wings))
    const tables = parts.filter((_, index) => index % 2 === 1).map(table => table.split('\n').slice(2))
    expect(tables.map(lines => lines.map(line => line.split(/ {2,}/)))).toEqual(
      wingOrder.map(wing => modulesByWing[wing].map(({ id, asks }) => [id, asks])),
    )
  })

  it('gives heads, or one module, as data', async () => {
    const cwd = folderWith()
    const list = JSON.parse((await undercroft(['modules', '--format', 'json'], { cwd })).stdout)
    expect(list.map(({ id, wing }: { id: string; wing: string }) => [wing, id])).toEqual(
      wingOrder.flatMap(wing => modulesByWing[wing].map(({ id }) => [wing, id])),
    )
    const one = JSON.parse((await undercroft(['modules', 'two-way-slab', '--format', 'json'], { cwd })).stdout)
    expect(one).toMatchObject({ id: 'two-way-slab', inputs: { short_span: { kind: 'quantity' } } })
  })

  it('gives a block that evaluates as pasted, for every module', async () => {
    const cwd = folderWith()
    const blocks: string[] = []
    for (const { id } of catalogue) {
      const page = (await undercroft(['modules', id], { cwd })).stdout
      const block = /^```calc [\s\S]*?^```$/m.exec(page)?.[0] ?? ''
      expect(block).toContain(`calc ${id} `)
      blocks.push(block)
    }
    const input = `---\ntitle: Pasted\n---\n\n${blocks.join('\n\n')}\n`
    const { status, stderr, stdout } = await undercroft(['check', '-'], { cwd, input })
    expect([status, stderr]).toEqual([0, ''])
    expect(stdout).toContain('all satisfied')
  }, 120_000)

  it('names the nearest module for one that there is not, and ends with 2', async () => {
    const { status, stderr } = await undercroft(['modules', 'two-way-slap'], { cwd: folderWith() })
    expect([status, stderr]).toEqual([2, 'No module is called `two-way-slap`\nDid you mean `two-way-slab`?\n'])
    const far = await undercroft(['modules', 'bicycle'], { cwd: folderWith() })
    expect([far.status, far.stderr]).toEqual([2, 'No module is called `bicycle`\n`undercroft modules` lists them\n'])
  })

  it('is quiet where its reader goes away', async () => {
    const line = `"${process.execPath}" "${command}" modules two-way-slab; echo "ended with $?" >&2`
    const child = spawn('sh', ['-c', `{ ${line}; } | head -1`], { stdio: 'pipe' })
    const text = { stdout: '', stderr: '' }
    for (const name of ['stdout', 'stderr'] as const)
      child[name].setEncoding('utf8').on('data', (piece: string) => {
        text[name] += piece
      })
    await new Promise(settle => child.on('close', settle))
    expect(text).toEqual({ stdout: expect.stringMatching(/^# two-way-slab: .*\n$/), stderr: 'ended with 0\n' })
  })
})
