import { execFileSync, spawnSync } from 'node:child_process'
import { chmodSync, mkdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { folderWith, sound } from './notebooks.ts'
import { plainUser, command as program, undercroft } from './run-undercroft.ts'

const commands = [['check'], ['results'], ['issue', '--html-only']]

it('refuses to run in a folder that is gone', () => {
  const cwd = join(folderWith(), 'gone')
  mkdirSync(cwd)
  const script = 'rmdir "$PWD"; exec "$0" "$1" check roof.md'
  const { status, stderr } = spawnSync('sh', ['-c', script, process.execPath, program], { cwd, encoding: 'utf8' })
  expect(status).toBe(2)
  expect(stderr).toBe(
    'The working folder cannot be used: there is no such file or folder\nGo to another folder with `cd`, and call again\n',
  )
})

describe.each(commands)('%s', (...command) => {
  const run = (file: string, cwd: string, more: { input?: string; uid?: number } = {}) =>
    undercroft([...command, file], { cwd, ...more })

  it('refuses a file that is not there', async () => {
    const { status, stderr } = await run('none.md', folderWith())
    expect([status, stderr]).toEqual([2, '`none.md` cannot be read: there is no such file or folder\n'])
  })

  it('refuses a folder', async () => {
    const cwd = folderWith()
    mkdirSync(join(cwd, 'roof.md'))
    const { status, stderr } = await run('roof.md', cwd)
    expect([status, stderr]).toEqual([2, '`roof.md` cannot be read: it is a folder, and a file is needed here\n'])
  })

  it('refuses a file that this user may not read', async context => {
    const user = await plainUser()
    if (!user) return context.skip('root may read everything, and no other user reaches the program')
    const cwd = folderWith({ 'roof.md': sound })
    chmodSync(cwd, 0o755)
    chmodSync(join(cwd, 'roof.md'), 0o000)
    const { status, stderr } = await run('roof.md', cwd, user)
    expect([status, stderr]).toEqual([2, '`roof.md` cannot be read: access is not permitted\n'])
  })

  it('refuses a path through a file', async () => {
    const { status, stderr } = await run('roof.md/more.md', folderWith({ 'roof.md': sound }))
    expect([status, stderr]).toEqual([2, '`roof.md/more.md` cannot be read: a part of the path is not a folder\n'])
  })

  it('reports an empty file as a notebook without a title block', async () => {
    const { status, stderr } = await run('roof.md', folderWith({ 'roof.md': '' }))
    expect(status).toBe(1)
    expect(stderr).toContain('roof.md:1:1  error  front-matter-missing')
  })

  it('reports bytes that are not UTF-8 where they stand', async () => {
    const { status, stderr } = await run(
      'roof.md',
      folderWith({ 'roof.md': Buffer.from(`${sound}\nB\xfchne\n`, 'latin1') }),
    )
    expect(status).toBe(1)
    expect(stderr).toContain(`roof.md:${sound.split('\n').length + 1}:2  error  file-not-utf8`)
    expect(stderr).toContain('help: Save the file as UTF-8')
  })

  it('reports a file of 10 MB as too large', async () => {
    const { status, stderr } = await run('roof.md', folderWith({ 'roof.md': 'The load. '.repeat(1e6) }))
    expect(status).toBe(1)
    expect(stderr).toContain('roof.md:1:1  error  file-too-large\nThe file has 10.00 MB; the limit is 2.00 MB')
  })

  it('stops reading a source that does not end', async () => {
    const { status, stderr } = await run('/dev/zero', folderWith())
    expect(status).toBe(1)
    expect(stderr).toContain('`/dev/zero` has more than 64 MB; the limit of a notebook is 2 MB')
  })

  it('refuses a pipe with a name, and reads one that a shell hands on', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    execFileSync('mkfifo', ['pipe.md'], { cwd })
    const { status, stderr } = await run('pipe.md', cwd)
    expect([status, stderr]).toEqual([
      2,
      '`pipe.md` cannot be read: it is a named pipe, and a file is needed here\n`-` reads standard input\n',
    ])
    const out = command[0] === 'issue' ? ['--out', '.'] : []
    const typed = [process.execPath, program, ...command, ...out]
    execFileSync('bash', ['-c', '"$@" <(cat roof.md) > out.txt', 'bash', ...typed], { cwd, stdio: 'pipe' })
    expect(readFileSync(join(cwd, 'out.txt'), 'utf8')).not.toBe('')
  })

  it('writes nothing into the folder of a notebook it refuses', async () => {
    const cwd = folderWith({ 'roof.md': '' })
    await run('roof.md', cwd)
    expect(execFileSync('ls', ['-A'], { cwd, encoding: 'utf8' })).toBe('roof.md\n')
  })
})

describe('a name that would steer the terminal', () => {
  it.each([
    ['check', '\u001b[31m.md'],
    ['trace', 'roof.md', 'a\u001b[31m'],
    ['vary', 'roof.md', '--on', '\u001b[31m'],
    ['compare', '\u001b[31m', 'roof.md'],
    ['modules', '\u001b[31m'],
    ['check', '--\u001b[31m', 'roof.md'],
  ])('is shown and not obeyed: %j %j', async (...args) => {
    const { status, stderr } = await undercroft(args, { cwd: folderWith({ 'roof.md': sound }) })
    expect(status).toBe(2)
    expect(stderr).toContain('␛[31m')
    expect(stderr).not.toContain('\u001b')
  })
})
