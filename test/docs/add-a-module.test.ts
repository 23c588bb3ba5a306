import { execFileSync, spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import type { Module } from '../../src/modules/module.ts'
import { runModule } from '../modules/run-module.ts'
import { pageBlocks } from './page-blocks.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const blocks = pageBlocks(readFileSync(join(root, 'docs/add-a-module.md'), 'utf8'))

const moduleFile = 'src/modules/living/drinking-water.ts'
const testFile = 'test/modules/living/drinking-water.test.ts'
const sourcesFile = 'src/modules/sources.ts'
const catalogueFile = 'src/modules/catalogue.ts'
const pageFiles = [moduleFile, testFile, sourcesFile, catalogueFile]

function blockAbout(about: string): string {
  const found = blocks.filter(block => block.about === about)
  if (found.length !== 1) throw new Error(`the page has ${found.length} blocks about ${about}`)
  return found[0]?.text ?? ''
}

/** A copy of what the recipe needs, in a folder of its own; the installed packages are linked. */
function copyProject(): string {
  const copy = mkdtempSync(join(tmpdir(), 'undercroft-recipe-'))
  for (const each of ['src', 'test/modules/run-module.ts', 'test/modules/published.test.ts'])
    cpSync(join(root, each), join(copy, each), { recursive: true })
  for (const each of ['package.json', 'tsconfig.json', 'vitest.config.ts', 'biome.json'])
    cpSync(join(root, each), join(copy, each))
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'))
  return copy
}

function write(copy: string, file: string, text: string): void {
  mkdirSync(dirname(join(copy, file)), { recursive: true })
  writeFileSync(join(copy, file), text)
}

function change(copy: string, file: string, edit: (text: string) => string): void {
  const before = readFileSync(join(root, file), 'utf8')
  const after = edit(before)
  if (after === before) throw new Error(`${file} has no place for the lines of the page`)
  write(copy, file, after)
}

/** Does what sections 2 to 5 of the page say. */
function followRecipe(copy: string): void {
  change(copy, sourcesFile, text => text.replace('  statics: {', `${blockAbout(sourcesFile)}  statics: {`))
  write(copy, moduleFile, blockAbout(moduleFile))
  change(copy, catalogueFile, text =>
    `${blockAbout(`${catalogueFile} import`)}${text}`.replace(
      /(catalogue: readonly Module\[\] = \[[^\]]*?),?\s*\]/,
      `$1,\n${blockAbout(`${catalogueFile} entry`)}]`,
    ),
  )
  write(copy, testFile, blockAbout(testFile))
}

const ownTsconfig = (): object => JSON.parse(readFileSync(join(root, 'tsconfig.json'), 'utf8')) as object

const commands = blocks.filter(block => block.language === 'sh').flatMap(block => block.text.trim().split('\n'))

/** Runs a command of the page in the copy, with the tools that are installed. */
function runCommand(copy: string, start: string): { readonly status: number | null; readonly output: string } {
  const command = commands.find(line => line.startsWith(start))
  if (!command) throw new Error(`the page has no command ${start}`)
  const env = Object.fromEntries(Object.entries(process.env).filter(([name]) => !name.startsWith('VITEST')))
  const [, tool = '', ...args] = command.split(' ')
  const bin = join(root, 'node_modules/.bin', tool)
  const done = spawnSync(bin, args, { cwd: copy, env: { ...env, NO_COLOR: '1' }, encoding: 'utf8' })
  return { status: done.status, output: `${done.stdout}${done.stderr}` }
}

describe('the page "Add a module"', () => {
  let copy = ''
  beforeAll(() => {
    copy = copyProject()
    followRecipe(copy)
  })
  afterAll(() => rmSync(copy, { recursive: true, force: true }))

  it('add-a-module: the tests of the page pass, and so does the published case', () => {
    const { status, output } = runCommand(copy, 'npx vitest run')
    expect(output).toMatch(/Test Files\s+2 passed/)
    expect(output).toMatch(/Tests\s+6 passed/)
    expect(status).toBe(0)
  })

  it('add-a-module: the files of the page have no fault of type', { timeout: 240_000 }, () => {
    write(copy, 'tsconfig.json', JSON.stringify({ ...ownTsconfig(), include: [], files: pageFiles }))
    const { output } = runCommand(copy, 'npx tsc')
    expect(output.split('\n').filter(line => pageFiles.some(file => line.startsWith(file)))).toEqual([])
  })

  it('add-a-module: the module and its test on the page are in the style of the house', () => {
    const biome = join(root, 'node_modules/.bin/biome')
    expect(() => execFileSync(biome, ['check', moduleFile, testFile], { cwd: copy, stdio: 'pipe' })).not.toThrow()
  })

  it('add-a-module: the block of the notebook evaluates, and what its text mentions exists', async () => {
    const notebook = blockAbout('drinking-water.md')
    const calc = pageBlocks(notebook).find(block => block.language === 'calc')
    expect(calc?.about).toBe('drinking-water water')
    const { drinkingWater } = (await import(join(copy, moduleFile))) as { drinkingWater: Module }
    const ran = runModule(drinkingWater, parse(calc?.text ?? '', { schema: 'failsafe' }) as Record<string, string>)
    expect(ran.errors).toEqual([])
    expect(ran.satisfied('stored')).toBe(true)
    const mentioned = [...notebook.matchAll(/:value\[water\.(\w+)\]/g)].map(([, name = '']) => ran.shown(name))
    expect(mentioned).toEqual(['1344 L', '1344 kg'])
  })

  it('add-a-module: the example of the module evaluates', async () => {
    const { drinkingWater } = (await import(join(copy, moduleFile))) as { drinkingWater: Module }
    expect(runModule(drinkingWater, drinkingWater.example).diagnostics).toEqual([])
  })

  it.each([
    ['a slip of dimension', "'V_day * days'", "'V_day'"],
    ['a wrong published answer', "V_w: '12 gal'", "V_w: '13 gal'"],
    ['a name that nothing has', "'V_day * days'", "'V_day * weeks'"],
  ])('add-a-module: %s in the recipe is found', (_, right, wrong) => {
    const text = blockAbout(moduleFile)
    expect(text).toContain(right)
    write(copy, moduleFile, text.replace(right, wrong))
    expect(runCommand(copy, 'npx vitest run').status).toBe(1)
    write(copy, moduleFile, text)
  })
})
