import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import '../command/run-undercroft.ts'

const root = resolve(import.meta.dirname, '../..')
const own = join(root, 'node_modules')

/** An empty project of a stranger's, with the packed tarball installed in it. */
let project = ''
let packed: string[] = []

/** Run below `npm test`, npm would take this project for the stranger's: what it was told about this one is left out. */
const kept = /^npm_config_(?:registry|cache|userconfig|globalconfig|https?_proxy|noproxy|cafile)$/i
const env = Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^npm_/i.test(name) || kept.test(name)))

function run(program: string, args: readonly string[]): { status: number | null; stdout: string; stderr: string } {
  return spawnSync(program, args, { cwd: project, encoding: 'utf8', env: { ...env, NO_COLOR: '1' } })
}

function runWell(program: string, args: readonly string[]): string {
  const { status, stdout, stderr } = run(program, args)
  if (status !== 0) throw new Error(`${program} ${args.join(' ')} ended with ${status}\n${stdout}\n${stderr}`)
  return stdout
}

beforeAll(() => {
  project = mkdtempSync(join(tmpdir(), 'undercroft-stranger-'))
  // As dist/ stands: the build is tested as it is, and not again.
  const pack = ['pack', root, '--ignore-scripts', '--json', '--pack-destination', project]
  const [tarball] = JSON.parse(runWell('npm', pack)) as { filename: string; files: { path: string }[] }[]
  if (!tarball) throw new Error('npm packed nothing')
  packed = tarball.files.map(({ path }) => path)
  writeFileSync(join(project, 'package.json'), '{ "name": "stranger", "private": true, "type": "module" }')
  runWell('npm', ['install', '--prefer-offline', '--no-audit', '--no-fund', `./${tarball.filename}`])
}, 300_000)
afterAll(() => rmSync(project, { recursive: true, force: true }))

/** The packages that files import, and the files of the package that those import, and so on. */
function importedFrom(entries: readonly string[]): string[] {
  const files = new Set(entries)
  const packages = new Set<string>()
  for (const file of files) {
    const text = readFileSync(file, 'utf8')
    for (const [, name = ''] of text.matchAll(
      /\b(?:from|import|import\(|require\(|module) ?["']((?:@?[a-z]|\.\.?\/)[\w./@:-]+)["']/g,
    )) {
      if (name.startsWith('.')) files.add(join(dirname(file), name.replace(/\.ts$/, '.d.ts')))
      else if (!name.startsWith('node:')) packages.add(name)
    }
  }
  return [...packages]
}

describe('the package', () => {
  it('holds the program, its types, its assets, the licences and the documents, and no test, bench or source', () => {
    for (const path of [
      'package.json',
      'README.md',
      'dist/command.js',
      'dist/main.cjs',
      'dist/program.cjs',
      'dist/program.code',
      'dist/index.js',
      'dist/remark-undercroft.js',
      'dist/types/index.d.ts',
      'dist/types/remark-undercroft.d.ts',
      'dist/templates/sheet.css',
      'dist/templates/starter/shelter.md',
      'dist/fonts/KaTeX_Main-Regular.woff2',
      'dist/THIRD-PARTY.txt',
    ])
      expect(packed).toContain(path)
    expect(
      packed.filter(path =>
        /(?:^|\/)(?:test|bench|src|node_modules)(?:\/|\.)|\.test\.|\.ts$/.test(path.replace(/\.d\.ts$/, '')),
      ),
    ).toEqual([])
  })

  it('bundles no test or bench code', () => {
    const dist = join(root, 'dist')
    const scripts = readdirSync(dist).filter(name => /\.c?js$/.test(name))
    for (const name of scripts)
      expect([
        name,
        /\b(?:from ?|require\()["'](?:vitest|fast-check|node:test)|undercroft-bench-/.test(
          readFileSync(join(dist, name), 'utf8'),
        ),
      ]).toEqual([name, false])
  })

  it('depends on what it imports at run time and in the types of its entry points, and on nothing else', () => {
    const { dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
    const installed = join(project, 'node_modules/undercroft')
    const entries = ['dist/types/index.d.ts', 'dist/types/remark-undercroft.d.ts'].map(path => join(installed, path))
    const types = importedFrom(entries).map(name => (existsSync(join(own, name)) ? name : `@types/${name}`))
    const programs = ['command.js', 'main.cjs', 'program.cjs', 'index.js', 'remark-undercroft.js', 'pdf.js']
    const needed = new Set([
      ...importedFrom(programs.map(name => join(installed, 'dist', name))),
      ...types,
      '@sparticuz/chromium',
    ])
    expect(Object.keys(dependencies).sort()).toEqual([...needed].sort())
    expect(readFileSync(join(root, 'src/sheets/pdf/packed-chromium.ts'), 'utf8')).toContain("'@sparticuz/chromium'")
  })

  it('stays small: the library under 3 MB, the program under 3.5 MB, beside the reader of PDF, which `prove` alone loads', () => {
    const dist = join(root, 'dist')
    const reader = ['pdf.js', 'pdf.worker.min.js']
    const size = (wanted: RegExp): number =>
      readdirSync(dist)
        .filter(name => wanted.test(name) && !reader.includes(name))
        .reduce((sum, name) => sum + statSync(join(dist, name)).size, 0)
    expect(size(/\.js$/)).toBeLessThan(3e6)
    expect(size(/\.cjs$/)).toBeLessThan(3.5e6)
    expect(size(/\.code$/)).toBeLessThan(3.5e6)
  })

  it('gives the licence of every package that is bundled, in its own words', () => {
    const notices = readFileSync(join(root, 'dist/THIRD-PARTY.txt'), 'utf8')
    const heads = [...notices.matchAll(/^(\S+) (\d+\.\d+\.\d+) \((.+)\)$/gm)].map(([, name, , licence]) => ({
      name,
      licence,
    }))
    for (const name of [
      'mathjs',
      'katex',
      'yaml',
      'unified',
      'remark-parse',
      'commander',
      '@fontsource/source-serif-4',
    ])
      expect(heads.map(head => head.name)).toContain(name)
    expect(
      heads.filter(({ licence }) => !/^(?:MIT|ISC|BSD-\d-Clause|Apache-2\.0|OFL-1\.1)$/.test(licence ?? '')),
    ).toEqual([])
    expect(notices.split('='.repeat(80)).length - 1).toBe(heads.length)
    expect(notices).toContain('SIL OPEN FONT LICENSE Version 1.1')
    expect(notices).toContain('Apache License')
  })
})

describe('the package, installed by a stranger', () => {
  it('brings what it needs and no more', () => {
    const here = readdirSync(join(project, 'node_modules')).filter(name => !name.startsWith('.'))
    expect(here).toContain('puppeteer-core')
    for (const bundled of ['mathjs', 'katex', 'yaml', 'commander', 'remark-parse', 'hast-util-to-html', 'typescript'])
      expect(here).not.toContain(bundled)
  })

  it('is a library with nothing else installed', () => {
    const program =
      "import('undercroft').then(all => console.log(all.catalogue.length > 5, typeof all.remarkUndercroft))"
    expect(runWell(process.execPath, ['-e', program])).toBe('true function\n')
  })

  it('starts, checks and issues', () => {
    expect(runWell('npx', ['undercroft', 'start', 'shelter'])).toBe('Wrote shelter/shelter.md\n')
    expect(runWell('npx', ['undercroft', 'check', 'shelter/shelter.md'])).toContain('all satisfied')
    expect(runWell('npx', ['undercroft', 'issue', 'shelter/shelter.md', '--out', 'out'])).toContain(
      'Wrote out/shelter.pdf',
    )
    expect(readdirSync(join(project, 'out')).sort()).toEqual(['shelter.html', 'shelter.pdf'])
  })

  it('is a plugin and a library in an ESM program of the stranger’s, beside the pipeline the manual names', () => {
    const { devDependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
    const pipeline = ['remark-parse', 'remark-rehype', 'hast-util-to-html'].map(
      name => `${name}@${devDependencies[name]}`,
    )
    runWell('npm', ['install', '--prefer-offline', '--no-audit', '--no-fund', ...pipeline])
    writeFileSync(
      join(project, 'page.js'),
      `import { readFileSync } from 'node:fs'
import { toHtml } from 'hast-util-to-html'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'
import { VFile } from 'vfile'
import { catalogue, evaluate, plan, readNotebook } from 'undercroft'
import remarkUndercroft from 'undercroft/remark'

const text = readFileSync('shelter/shelter.md', 'utf8')
const file = new VFile({ path: 'shelter.md', value: text })
const pipeline = unified().use(remarkParse).use(remarkUndercroft).use(remarkRehype)
const html = toHtml(await pipeline.run(pipeline.parse(file), file))
const results = evaluate(plan(readNotebook(text, { path: 'shelter.md' }), catalogue))
console.log(JSON.stringify({ steps: html.match(/data-line=/g).length, messages: file.messages.length, results: typeof results }))
`,
    )
    const said = JSON.parse(runWell(process.execPath, ['page.js']))
    expect(said).toEqual({ steps: expect.any(Number), messages: 0, results: 'object' })
    expect(said.steps).toBeGreaterThan(5)
  }, 120_000)

  it('has types that a strict program compiles against, and that find wrong use', () => {
    const tsc = join(own, 'typescript/bin/tsc')
    const options = ['--noEmit', '--strict', '--module', 'nodenext', '--target', 'es2022']
    const head = `import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { VFile } from 'vfile'
import { defineModule, readNotebook, step, quantity, type Module, type Notebook } from 'undercroft'
import remarkUndercroft, { type UndercroftOptions } from 'undercroft/remark'
`
    const sound = `const mine: Module = defineModule({
  id: 'pour', version: '1.0.0', title: 'Pour', asks: 'How much?',
  inputs: { area: quantity('area', { says: 'area' }) },
  steps: [step('V', 'area * 1 m', { says: 'volume' })],
  results: ['V'], limits: [], cautions: [], published: [], example: { area: '1 m^2' },
})
const options: UndercroftOptions = { modules: [mine] }
export const pipeline = unified().use(remarkParse).use(remarkUndercroft, options)
export const notebook: Notebook = readNotebook('', { path: 'a.md' })
export const title: string | undefined = new VFile().data.undercroft?.notebook.title.title
`
    writeFileSync(join(project, 'sound.ts'), head + sound)
    writeFileSync(
      join(project, 'wrong.ts'),
      `${head}${sound}unified().use(remarkUndercroft, { modules: [{ id: 'pour' }] })\n`,
    )
    const { stdout } = run(process.execPath, [tsc, ...options, 'sound.ts', 'wrong.ts'])
    expect(
      stdout
        .trimEnd()
        .split('\n')
        .filter(line => !/^wrong\.ts\(\d+,\d+\): error TS|^ /.test(line)),
    ).toEqual([])
    expect(stdout).toContain('wrong.ts')
  })

  it('gives its sheet style by name, and nothing that it does not export', () => {
    const resolveIn = (name: string) =>
      run(process.execPath, ['--input-type=module', '-e', `console.log(import.meta.resolve(${JSON.stringify(name)}))`])
    const sheet = new URL(resolveIn('undercroft/sheet.css').stdout.trim())
    expect(existsSync(sheet)).toBe(true)
    const inside = run(process.execPath, ['--input-type=module', '-e', "await import('undercroft/dist/command.js')"])
    expect(inside.stderr).toContain('ERR_PACKAGE_PATH_NOT_EXPORTED')
  })
})
