// Builds dist/: the program and library bundled, the types, the files that sheets and `start` read, and the licences of what went in.
// `--bench` builds the bench instead, into out/bench. `--no-types` leaves the types out.
import { execFileSync } from 'node:child_process'
import {
  chmodSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('.', import.meta.url))
const modules = join(root, 'node_modules')
const bench = process.argv.includes('--bench')
const types = !process.argv.includes('--no-types')
const shared = {
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  target: 'node20.11',
  // Names stay, so that a reported stack can be read.
  minifyWhitespace: true,
  minifySyntax: true,
  // For Node, yaml gives CommonJS, of which nothing can be left out, and fflate asks for threads, which are not used.
  alias: { yaml: join(modules, 'yaml/browser/index.js'), fflate: join(modules, 'fflate/esm/browser.js') },
  // These find files beside themselves, so they stay packages of their own.
  external: ['puppeteer-core', '@sparticuz/chromium', 'tar-fs'],
  legalComments: 'none',
  logLevel: 'warning',
  plugins: [
    { name: 'no-child-process', setup: leaveChildProcessOut },
    { name: 'reader-of-pdf', setup: readerOfPdfApart },
  ],
}
// Packages in CommonJS that are bundled into an ES module still call for Node's own parts by `require`.
const ownRequire =
  "import { createRequire as undercroftRequire } from 'node:module'; const require = undercroftRequire(import.meta.url);"
// Made whole under another name and then renamed, so that nothing ever finds half a dist/.
const stage = mkdtempSync(join(root, '.build-'))

try {
  const inputs = await bundle()
  const packages = new Set([...inputs.map(packageOf), ...copyAssets()])
  packages.delete(undefined)
  writeFileSync(join(stage, 'THIRD-PARTY.txt'), thirdParty([...packages].sort()))
  if (types && !bench) declareTypes()
  putInPlace(join(root, bench ? 'out/bench' : 'dist'))
} finally {
  rmSync(stage, { recursive: true, force: true })
}

async function bundle() {
  const library = {
    index: 'src/index.ts',
    'remark-undercroft': 'src/remark-undercroft.ts',
    pdf: 'pdfjs-dist/legacy/build/pdf.mjs',
    'pdf.worker.min': 'pdfjs-dist/legacy/build/pdf.worker.min.mjs',
  }
  const made = bench
    ? [await bundled({ bench: 'test/bench/main.ts' }, stage)]
    : [await bundled(library, stage), await bundleProgram()]
  return made.flatMap(({ outputs }) => Object.values(outputs).flatMap(output => Object.keys(output.inputs)))
}

/** The program as one file, of which V8 can keep the compiled code, and the small one that starts it. */
async function bundleProgram() {
  const parts = join(stage, 'parts')
  // In parts first: only there is what an import at need brings freed of everything unused.
  const made = await bundled(
    { program: 'src/command/run-process.ts', 'keep-code': 'src/command/keep-code.ts' },
    parts,
    '',
  )
  await build({
    ...shared,
    absWorkingDir: parts,
    entryPoints: ['program.js'],
    outfile: join(stage, 'program.cjs'),
    format: 'cjs',
    define: { 'import.meta.url': 'undercroftFile' },
    banner: { js: "const undercroftFile = require('node:url').pathToFileURL(__filename).href;" },
  })
  const text = readFileSync(join(stage, 'program.cjs'), 'utf8')
  writeFileSync(join(stage, 'program.cjs'), inAscii(importsOutside(text)))
  writeFileSync(join(stage, 'import.cjs'), 'module.exports = name => import(name)\n')
  await build({ ...shared, entryPoints: ['src/command/main.ts'], outfile: join(stage, 'main.cjs'), format: 'cjs' })
  const command =
    "#!/usr/bin/env node\nimport { createRequire } from 'node:module'\ncreateRequire(import.meta.url)('./main.cjs')\n"
  writeFileSync(join(stage, 'command.js'), command, { mode: 0o755 })
  const keep = [join(parts, 'keep-code.js'), join(stage, 'program.cjs'), join(stage, 'program.code')]
  const notebook = join(root, 'templates/starter/shelter.md')
  execFileSync(process.execPath, [...keep, 'check', notebook], { stdio: ['ignore', 'ignore', 'inherit'] })
  rmSync(parts, { recursive: true })
  return made
}

/** commander wants other programs only for commands that are programs of their own; there are none, and loading that costs every start. */
function leaveChildProcessOut({ onResolve, onLoad }) {
  onResolve({ filter: /^node:child_process$/ }, ({ importer }) =>
    /node_modules.commander/.test(importer) ? { path: 'child_process', namespace: 'left-out' } : undefined,
  )
  onLoad({ filter: /^/, namespace: 'left-out' }, () => ({ contents: 'module.exports = {}' }))
}

/** The reader of PDF is as large as all the rest, and only `prove` loads it: it stays beside the program. */
function readerOfPdfApart({ onResolve }) {
  onResolve({ filter: /^pdfjs-dist\/legacy\/build\/(?:.*)\.mjs$/ }, ({ path, kind }) =>
    kind === 'dynamic-import' ? { path: `./${basename(path, '.mjs')}.js`, external: true } : undefined,
  )
  onResolve({ filter: /^\.\/pdf(?:\.worker\.min)?\.js$/ }, ({ path }) => ({ path, external: true }))
}

/** A script that V8 is given kept code for can import nothing; a file beside it can. */
function importsOutside(text) {
  const done = text.replaceAll(/\bimport\((?="\.\/pdf)/g, 'require("./import.cjs")(')
  if (/(?<!\.)\bimport\(/.test(done)) throw new Error('the program imports more at need than the reader of PDF')
  return done
}

/** Plain ASCII is read fastest. What the bundler leaves stands in regular expressions, where an escape means the same. */
function inAscii(text) {
  if (/\\\P{ASCII}/u.test(text)) throw new Error('the program has a backslash before a character outside ASCII')
  return text.replace(/[^\0-\x7f]/g, unit => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
}

/** A program that ends as CommonJS has `require` already. */
async function bundled(entryPoints, outdir, js = ownRequire) {
  const { metafile } = await build({
    ...shared,
    entryPoints,
    outdir,
    splitting: true,
    format: 'esm',
    define: {
      UNDERCROFT_VERSION: JSON.stringify(JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).version),
    },
    banner: { js },
    metafile: true,
  })
  return metafile
}

/** Copies templates, styles and fonts; returns the folders of the packages they come from. */
function copyAssets() {
  cpSync(join(root, 'templates'), join(stage, 'templates'), { recursive: true })
  mkdirSync(join(stage, 'fonts'))
  const katex = join(modules, 'katex')
  cpSync(join(katex, 'dist/katex.min.css'), join(stage, 'templates/katex.min.css'))
  copyFonts(join(katex, 'dist/fonts'), /\.woff2$/)
  const faces = join(modules, '@fontsource/source-serif-4')
  copyFonts(join(faces, 'files'), /-(?:latin|latin-ext|greek)-(?:400-normal|400-italic|600-normal|700-normal)\.woff2$/)
  return [katex, faces]
}

function copyFonts(folder, wanted) {
  for (const name of readdirSync(folder)) if (wanted.test(name)) cpSync(join(folder, name), join(stage, 'fonts', name))
}

/** The folder of the package that a file of the bundle comes from; nothing for our own. */
function packageOf(input) {
  return /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(join(root, input))?.[1]
}

/** The licence of every package that went in, in the package's own words. Throws where a package has none. */
function thirdParty(folders) {
  const head = `undercroft holds parts of these ${folders.length} packages, each under its own licence.\n`
  return [head, ...folders.map(licenceOf)].join(`\n${'='.repeat(80)}\n`)
}

function licenceOf(folder) {
  const facts = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  const { name, version, license = facts.licenses?.[0]?.type } = facts
  const files = readdirSync(folder).filter(file => /^(?:licen[cs]e|notice|copying)(?:[.-].*)?$/i.test(file))
  const texts = files.sort().map(file => readFileSync(join(folder, file), 'utf8').trim())
  return [`${name} ${version} (${license})`, ...(texts.length > 0 ? texts : [statedMit(facts, license)])]
    .join('\n\n')
    .concat('\n')
}

/** The text that a package refers to when it states MIT and its author and holds no licence file. */
function statedMit({ name, author }, license) {
  const holder = typeof author === 'object' ? author.name : author
  if (license !== 'MIT' || !holder) throw new Error(`${name} comes without a licence`)
  const text = readFileSync(join(modules, 'unified/license'), 'utf8')
  return text.replace(/^Copyright \(c\).*$/m, `Copyright (c) ${holder}`).trim()
}

function declareTypes() {
  const tsc = join(modules, 'typescript/bin/tsc')
  const to = ['-p', join(root, 'tsconfig.types.json'), '--outDir', join(stage, 'types')]
  execFileSync(process.execPath, [tsc, ...to], { stdio: 'inherit' })
}

function putInPlace(target) {
  const old = join(dirname(stage), `${basename(stage)}-old`)
  mkdirSync(dirname(target), { recursive: true })
  try {
    renameSync(target, old)
  } catch (thrown) {
    if (thrown.code !== 'ENOENT') throw thrown
  }
  chmodSync(stage, 0o755)
  renameSync(stage, target)
  rmSync(old, { recursive: true, force: true })
}
