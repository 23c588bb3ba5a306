import { execFileSync, spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { makeWorkings } from '../../src/evaluation/make-workings.ts'
import { plan } from '../../src/evaluation/plan.ts'
import type { Module } from '../../src/modules/module.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'
import { runModule } from '../modules/run-module.ts'
import { pageBlocks } from './page-blocks.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const blocks = pageBlocks(readFileSync(join(root, 'docs/add-a-module.md'), 'utf8'))

const moduleFile = 'src/modules/living/drinking-water.ts'
const testFile = 'test/modules/living/drinking-water.test.ts'
const sourcesFile = 'src/modules/living/living-sources.ts'
const listFile = 'src/modules/living/living-modules.ts'
const nomenclatureFile = 'src/modules/living/nomenclature.ts'
const pageFiles = [moduleFile, testFile, sourcesFile, listFile, nomenclatureFile]

function blockAbout(about: string): string {
  const found = blocks.filter(block => block.about === about)
  if (found.length !== 1) throw new Error(`the page has ${found.length} blocks about ${about}`)
  return found[0]?.text ?? ''
}

const copied = [
  'src',
  'docs/modules',
  'docs/nomenclature.md',
  'test/modules/run-module.ts',
  'test/modules/published.test.ts',
  'test/modules/nomenclature.test.ts',
  'test/modules/nomenclature-of.ts',
  'test/modules/two-symbols.ts',
  'test/modules/symbol-uses.ts',
  'test/modules/input-sets.ts',
  'test/docs/module-pages.test.ts',
  'test/docs/nomenclature.test.ts',
  'test/docs/at-need.test.ts',
  'test/docs/nomenclature-page.ts',
]

/** A copy of what the recipe needs, in a folder of its own; the installed packages are linked. */
function copyProject(): string {
  const copy = mkdtempSync(join(tmpdir(), 'undercroft-recipe-'))
  for (const each of copied) cpSync(join(root, each), join(copy, each), { recursive: true })
  for (const each of ['package.json', 'tsconfig.json', 'biome.json']) cpSync(join(root, each), join(copy, each))
  write(copy, 'vitest.config.ts', "export default { test: { include: ['test/**/*.test.ts'], testTimeout: 60_000 } }\n")
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

/** Does what sections 2 to 5 of the page say; sections 6 and 7 are tests of their own. */
function followRecipe(copy: string): void {
  change(copy, sourcesFile, text => text.replace(/^\} as const/m, `${blockAbout(sourcesFile)}} as const`))
  write(copy, moduleFile, blockAbout(moduleFile))
  change(copy, listFile, text =>
    `${blockAbout(`${listFile} import`)}${text}`.replace(
      /(livingModules: readonly Module\[\] = \[[^\]]*?),?\s*\]/,
      `$1,\n${blockAbout(`${listFile} entry`)}]`,
    ),
  )
  change(copy, nomenclatureFile, text => text.replace(/\}\s*$/, `${blockAbout(`${nomenclatureFile} entry`)}}\n`))
  write(copy, testFile, blockAbout(testFile))
}

const ownTsconfig = (): object => JSON.parse(readFileSync(join(root, 'tsconfig.json'), 'utf8')) as object

const commands = blocks.filter(block => block.language === 'sh').flatMap(block => block.text.trim().split('\n'))

/** Runs the command of the page that has this in it, in the copy, with the tools that are installed. */
function runCommand(copy: string, has: string): { readonly status: number | null; readonly output: string } {
  const command = commands.find(line => line.includes(has))
  if (!command) throw new Error(`the page has no command with ${has}`)
  const [setting = '', after] = command.split('npx ')
  const [tool = '', ...args] = (after ?? '').split(' ')
  const env = Object.entries(process.env).filter(([name]) => !name.startsWith('VITEST') && name !== 'UPDATE_DOCS')
  const own = setting.trim() ? [setting.trim().split('=') as [string, string]] : []
  const done = spawnSync(join(root, 'node_modules/.bin', tool), args, {
    cwd: copy,
    env: Object.fromEntries([...env, ['NO_COLOR', '1'], ...own]),
    encoding: 'utf8',
  })
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
    const { status, output } = runCommand(copy, 'vitest run test/modules')
    expect(output).toMatch(/Test Files\s+2 passed/)
    expect(output).toMatch(/Tests\s+6 passed/)
    expect(status).toBe(0)
  })

  it('add-a-module: the files of the page have no fault of type', { timeout: 240_000 }, () => {
    write(copy, 'tsconfig.json', JSON.stringify({ ...ownTsconfig(), include: [], files: pageFiles }))
    const { output } = runCommand(copy, 'tsc')
    expect(output.split('\n').filter(line => pageFiles.some(file => line.startsWith(file)))).toEqual([])
  })

  it('add-a-module: the module and its test on the page are in the style of the house', () => {
    const biome = join(root, 'node_modules/.bin/biome')
    expect(() => execFileSync(biome, ['check', moduleFile, testFile], { cwd: copy, stdio: 'pipe' })).not.toThrow()
  })

  it('add-a-module: the notebook of the page evaluates, and what its text mentions is answered', async () => {
    const { drinkingWater } = (await import(join(copy, moduleFile))) as { drinkingWater: Module }
    const read = readNotebook(blockAbout('drinking-water.md'), { path: 'drinking-water.md' })
    const results = evaluate(plan(read, [drinkingWater]))
    expect(results.diagnostics).toEqual([])
    const answers = makeWorkings(results).answers.map(answer =>
      answer.kind === 'value' ? `${answer.printed.shown.digits} ${answer.printed.shown.unit.text}` : answer.kind,
    )
    expect(answers).toEqual(['1344 L', '1344 kg'])
  })

  it('add-a-module: the line for a symbol that another module has is wanted, and is enough', {
    timeout: 240_000,
  }, () => {
    expect(runCommand(copy, 'nomenclature.test.ts -t').status).toBe(0)
    const withLine = readFileSync(join(copy, nomenclatureFile), 'utf8')
    write(copy, nomenclatureFile, withLine.replace(blockAbout(`${nomenclatureFile} entry`), ''))
    const { status, output } = runCommand(copy, 'nomenclature.test.ts -t')
    write(copy, nomenclatureFile, withLine)
    expect(status).toBe(1)
    expect(output).toContain('V_w has no one meaning: water-store, drinking-water')
  })

  it('add-a-module: the page of the module is made from it, and its symbols are told', { timeout: 240_000 }, () => {
    expect(runCommand(copy, 'module-pages').status).toBe(0)
    expect(readFileSync(join(copy, 'docs/nomenclature.md'), 'utf8')).toContain(
      '[drinking-water](modules/drinking-water.md)',
    )
    const made = (name: string) => readFileSync(join(copy, 'docs/modules', name), 'utf8')
    expect(made('drinking-water.md')).toContain('the tanks hold the water needed')
    expect(made('README.md')).toContain('drinking-water.md')
  })

  it('add-a-module: the example of the module evaluates', async () => {
    const { drinkingWater } = (await import(join(copy, moduleFile))) as { drinkingWater: Module }
    expect(runModule(drinkingWater, drinkingWater.example).diagnostics).toEqual([])
  })

  it.each([
    ['a slip of dimension', "'V_day * days'", "'V_day'", 'cannot be shown in `L`'],
    ['a wrong published answer', "V_w: '12 gal'", "V_w: '13 gal'", 'printed 13'],
    ['a name that nothing has', "'V_day * days'", "'V_day * weeks'", 'weeks'],
  ])('add-a-module: %s in the recipe is found', (_, right, wrong, says) => {
    const text = blockAbout(moduleFile)
    expect(text).toContain(right)
    write(copy, moduleFile, text.replace(right, wrong))
    const { status, output } = runCommand(copy, 'vitest run test/modules')
    write(copy, moduleFile, text)
    expect(status).toBe(1)
    expect(output).toContain(says)
  })
})
