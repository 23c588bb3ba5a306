import { existsSync } from 'node:fs'
import { mkdir, mkdtemp, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { unpackOnce } from '../../../src/sheets/pdf/unpack-once.ts'

let parent: string
let folder: string
let filled = 0
const needs = ['program', 'lib/part']

beforeEach(async () => {
  parent = await mkdtemp(join(tmpdir(), 'undercroft-test-'))
  folder = join(parent, 'cache', 'thing-1.0')
  filled = 0
})
afterEach(() => rm(parent, { recursive: true, force: true }))

async function fill(empty: string): Promise<void> {
  filled += 1
  await mkdir(join(empty, 'lib'))
  await writeFile(join(empty, 'lib', 'part'), 'part')
  await new Promise(resolve => setTimeout(resolve, 20))
  await writeFile(join(empty, 'program'), 'whole')
}

test('cache: a folder is filled once and found again', async () => {
  expect(await unpackOnce(folder, { needs, fill })).toBe(folder)
  await unpackOnce(folder, { needs, fill })
  expect(filled).toBe(1)
})

test('cache: four at once all end with one whole folder and nothing beside it', async () => {
  await Promise.all([1, 2, 3, 4].map(() => unpackOnce(folder, { needs, fill })))
  expect(await readFile(join(folder, 'program'), 'utf8')).toBe('whole')
  expect(await readdir(join(parent, 'cache'))).toEqual(['thing-1.0'])
})

test('cache: a filling that fails leaves nothing', async () => {
  const failing = unpackOnce(folder, { needs, fill: () => Promise.reject(new Error('disk full')) })
  await expect(failing).rejects.toThrow('disk full')
  expect(await readdir(join(parent, 'cache'))).toEqual([])
})

test('cache: what a killed run left is not used, and is removed once it is old', async () => {
  await mkdir(`${folder}.part-young`, { recursive: true })
  await mkdir(`${folder}.part-old`)
  const longAgo = new Date('2020-01-01T00:00:00Z')
  await utimes(`${folder}.part-old`, longAgo, longAgo)
  await unpackOnce(folder, { needs, fill })
  expect((await readdir(join(parent, 'cache'))).sort()).toEqual(['thing-1.0', 'thing-1.0.part-young'])
})

test('cache: a folder out of which a file was taken is made anew', async () => {
  await unpackOnce(folder, { needs, fill })
  await rm(join(folder, 'lib', 'part'))
  await unpackOnce(folder, { needs, fill })
  expect(existsSync(join(folder, 'lib', 'part'))).toBe(true)
  expect(await readdir(join(parent, 'cache'))).toEqual(['thing-1.0'])
})
