import { spawnSync } from 'node:child_process'
import { chmodSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { codeToKeep, keptCode } from '../../src/command/kept-code.ts'
import { dist, plainUser, undercroft } from './run-undercroft.ts'

let place = ''
let answer = ''
const starter = join(dist, 'templates/starter/shelter.md')
const at = (name: string): string => join(place, name)

beforeAll(async () => {
  answer = (await undercroft(['check', starter], { cwd: dist })).stdout
  expect(answer).toContain('all satisfied')
})
beforeEach(() => {
  rmSync(place, { recursive: true, force: true })
  place = mkdtempSync(join(tmpdir(), 'undercroft-code-'))
  chmodSync(place, 0o755)
  for (const name of ['command.js', 'main.cjs', 'program.cjs', 'program.code', 'templates'])
    cpSync(join(dist, name), at(name), { recursive: true })
  writeFileSync(at('package.json'), '{ "type": "module" }')
})
afterAll(() => rmSync(place, { recursive: true, force: true }))

/** What `check` of the starter comes to in the copy. */
const checked = (options: { env?: Record<string, string>; uid?: number } = {}) =>
  undercroft(['check', starter], { cwd: place, program: at('command.js'), ...options })

/** Changes one byte. */
function damage(name: string, where: (length: number) => number): void {
  const bytes = readFileSync(at(name))
  const index = where(bytes.length)
  bytes.writeUInt8((bytes[index] ?? 0) ^ 1, index)
  writeFileSync(at(name), bytes)
}

/** Says whether V8 refuses the kept code. */
const look = `const { readFileSync } = require('node:fs')
  const program = readFileSync('program.cjs', 'latin1')
  const text = '(function (exports, require, module, __filename, __dirname) { ' + program + '\\n})'
  const { Script } = require('node:vm')
  console.log(new Script(text, { cachedData: readFileSync('program.code').subarray(32) }).cachedDataRejected)`
const node = (args: readonly string[]) =>
  spawnSync(process.execPath, args, { cwd: place, encoding: 'utf8', env: { ...process.env, NO_COLOR: '1' } })

const kept = () => keptCode(at('program.code'), readFileSync(at('program.cjs')))

describe('kept code', () => {
  it('is of the program that was built, and V8 takes it', () => {
    expect(kept()?.length).toBeGreaterThan(1e5)
    expect(node(['-e', look]).stdout).toBe('false\n')
  })

  it('is left aside where a byte of it is another, where it is cut off, and where it is not there', async () => {
    for (const where of [() => 0, () => 40, (length: number) => length >> 1, (length: number) => length - 1]) {
      damage('program.code', where)
      expect(kept()).toBeUndefined()
      expect(await checked()).toMatchObject({ status: 0, stdout: answer, stderr: '' })
      damage('program.code', where)
    }
    expect(kept()).toBeDefined()
    for (const bytes of [readFileSync(at('program.code')).subarray(0, 1e5), Buffer.from('no'), Buffer.alloc(0)]) {
      writeFileSync(at('program.code'), bytes)
      expect(kept()).toBeUndefined()
      expect(await checked()).toMatchObject({ status: 0, stdout: answer, stderr: '' })
    }
    rmSync(at('program.code'))
    expect(kept()).toBeUndefined()
    expect(await checked()).toMatchObject({ status: 0, stdout: answer, stderr: '' })
  })

  it('never stands for a program that was changed, even to one as long', async () => {
    const program = readFileSync(at('program.cjs'), 'utf8')
    expect(program).toContain('all satisfied')
    writeFileSync(at('program.cjs'), program.replaceAll('all satisfied', 'ALL SATISFIED'))
    expect(kept()).toBeUndefined()
    expect((await checked()).stdout).toBe(answer.replaceAll('all satisfied', 'ALL SATISFIED'))
  })

  it('is of one version of Node', () => {
    const program = Buffer.from('1')
    const file = codeToKeep(program, Buffer.from('code'))
    writeFileSync(at('one'), file)
    expect(keptCode(at('one'), program)?.toString()).toBe('code')
    const { version } = process
    try {
      Object.defineProperty(process, 'version', { value: 'v20.0.0' })
      expect(keptCode(at('one'), program)).toBeUndefined()
    } finally {
      Object.defineProperty(process, 'version', { value: version })
    }
  })

  it('may be refused by V8: then the program is compiled as it stands', async () => {
    const program = readFileSync(at('program.cjs'))
    writeFileSync(at('program.code'), codeToKeep(program, Buffer.from('not what V8 compiled')))
    expect(kept()).toBeDefined()
    expect(await checked()).toMatchObject({ status: 0, stdout: answer, stderr: '' })
    cpSync(join(dist, 'program.code'), at('program.code'))
    // V8 refuses what was compiled under other settings.
    expect(node(['--no-opt', '-e', look]).stdout).toBe('true\n')
    expect(node(['--no-opt', 'command.js', 'check', starter])).toMatchObject({ status: 0, stdout: answer, stderr: '' })
  })

  it('needs a folder that can only be read', async () => {
    chmodSync(place, 0o555)
    try {
      expect(await checked((await plainUser()) ?? {})).toMatchObject({ status: 0, stdout: answer, stderr: '' })
    } finally {
      chmodSync(place, 0o755)
    }
  })
})
