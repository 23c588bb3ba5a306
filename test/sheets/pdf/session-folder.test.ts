import { execFileSync, spawn } from 'node:child_process'
import { chown, mkdir, mkdtemp, readdir, rm, symlink, writeFile } from 'node:fs/promises'
import { platform, tmpdir, userInfo } from 'node:os'
import { basename, join } from 'node:path'
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { makeSession, removeSession } from '../../../src/sheets/pdf/session-folder.ts'

const before = process.env.TMPDIR
let folder: string
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'undercroft-test-'))
  process.env.TMPDIR = folder
})
afterEach(async () => {
  for (const name of await readdir(folder)) await rm(join(folder, name), { recursive: true })
})
afterAll(async () => {
  if (before === undefined) delete process.env.TMPDIR
  else process.env.TMPDIR = before
  await rm(folder, { recursive: true, force: true })
})

/** The number of a process that has ended. */
const dead = (): number => Number(execFileSync(process.execPath, ['-p', 'process.pid'], { encoding: 'utf8' }))

async function session(): Promise<string> {
  const made = await makeSession()
  if (typeof made !== 'string') throw new Error(made.says)
  return made
}

/** A folder as a session of another process would be called: our own with that process in its name. */
async function leftBy(owner: number, { place }: { place?: string } = {}): Promise<string> {
  const own = await session()
  const [, known = ''] = /^undercroft-print-([0-9a-f]{8})-\d+-\w{6}$/.exec(basename(own)) ?? []
  await removeSession(own)
  const left = join(folder, `undercroft-print-${place ?? known}-${owner}-aB3dE6`)
  await mkdir(join(left, 'profile'), { recursive: true })
  await writeFile(join(left, 'profile', 'lock'), '')
  return left
}

const remaining = async (own: string): Promise<string[]> =>
  (await readdir(folder)).filter(name => name !== basename(own)).sort()

describe('session folder', () => {
  test('a dead owner: the folder that a killed process left is removed, with all in it', async () => {
    await leftBy(dead())
    expect(await remaining(await session())).toEqual([])
  })

  test('a live owner: its folder stays, another process of ours or our own', async () => {
    const other = spawn(process.execPath, ['-e', 'setInterval(() => 0, 1000)'])
    try {
      const left = await leftBy(other.pid ?? 0)
      const first = await session()
      expect(await remaining(await session())).toEqual([basename(left), basename(first)].sort())
    } finally {
      other.kill('SIGKILL')
    }
  })

  test('a process of another machine or container: its number says nothing, and the folder stays', async () => {
    const left = await leftBy(dead(), { place: '00c0ffee' })
    expect(await remaining(await session())).toEqual([basename(left)])
  })

  test('another user: the folder stays', { skip: platform() === 'win32' || userInfo().uid !== 0 }, async () => {
    const left = await leftBy(dead())
    await chown(left, 4321, 4321)
    expect(await remaining(await session())).toEqual([basename(left)])
  })

  test('no folder: a link or a file of such a name is left alone, and so is any other name', async () => {
    const left = await leftBy(dead())
    await mkdir(join(folder, 'kept'))
    await writeFile(join(folder, 'kept', 'paper'), 'kept')
    await rm(left, { recursive: true })
    await symlink(join(folder, 'kept'), left)
    await writeFile(left.replace(/\w{6}$/, 'fff666'), '')
    await mkdir(join(folder, 'undercroft-print-mine'))
    const others = (await readdir(folder)).sort()
    expect(await remaining(await session())).toEqual(others)
    expect(await readdir(join(folder, 'kept'))).toEqual(['paper'])
  })

  test('nowhere to write: refused in words', async () => {
    process.env.TMPDIR = join(folder, 'nowhere')
    const made = await makeSession()
    process.env.TMPDIR = folder
    expect(made).toMatchObject({ ok: false, reason: 'print-failed', help: expect.stringContaining('TMPDIR') })
  })
})
