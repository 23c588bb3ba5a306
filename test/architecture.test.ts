import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'

const root = resolve(import.meta.dirname, '..')
const src = join(root, 'src')

/** What each room may import besides itself. The same table stands in DEVELOPERS.md. */
const mayImport: Readonly<Record<string, readonly string[]>> = {
  quantity: [],
  diagnostic: [],
  formula: ['quantity', 'diagnostic'],
  modules: ['quantity', 'formula'],
  notebook: ['quantity', 'formula', 'diagnostic'],
  evaluation: ['notebook (types)', 'modules', 'formula', 'quantity', 'diagnostic'],
  typesetting: ['evaluation (types)', 'formula', 'quantity', 'modules (types)'],
  study: ['evaluation', 'notebook (types)', 'modules', 'formula', 'quantity', 'diagnostic'],
  checking: ['evaluation', 'formula', 'quantity', 'diagnostic'],
  comparison: ['evaluation', 'notebook (types)', 'modules (types)', 'formula', 'quantity', 'diagnostic'],
  sheets: [
    'typesetting',
    'study (types)',
    'comparison (types)',
    'checking (types)',
    'evaluation (types)',
    'notebook (types)',
    'diagnostic',
    'quantity',
    'formula (types)',
  ],
  command: [
    'quantity',
    'diagnostic',
    'formula',
    'modules',
    'notebook',
    'evaluation',
    'study',
    'comparison',
    'checking',
    'typesetting',
    'sheets',
  ],
  /** The hallway and the public names: files at the top of src. */
  '': ['quantity', 'diagnostic', 'formula', 'modules', 'notebook', 'evaluation', 'typesetting', 'sheets', ''],
}

/** The one home of each outside library; a room, or a folder of one. */
const homes: Readonly<Record<string, readonly string[]>> = {
  mathjs: ['formula'],
  fflate: ['sheets/pdf'],
  yaml: ['notebook', 'checking'],
  'remark-parse': ['notebook'],
  'remark-stringify': ['notebook'],
  'remark-directive': ['notebook'],
  'remark-frontmatter': ['notebook'],
  'remark-gfm': ['notebook'],
  'remark-math': ['notebook'],
  'remark-rehype': ['notebook'],
  'mdast-util-directive': ['notebook'],
  'mdast-util-to-markdown': ['notebook'],
  'mdast-util-to-string': ['notebook'],
  'micromark-util-types': ['notebook'],
  'unist-util-visit': ['notebook', ''],
  unified: ['notebook', ''],
  mdast: ['notebook', ''],
  vfile: ['notebook', ''],
  katex: ['typesetting'],
  hastscript: ['typesetting', 'sheets'],
  hast: ['typesetting', 'sheets', 'notebook', ''],
  'hast-util-to-html': ['typesetting', 'sheets'],
  'hast-util-from-html-isomorphic': ['typesetting', 'sheets'],
  'puppeteer-core': ['sheets/pdf'],
  '@sparticuz/chromium': ['sheets/pdf'],
  'tar-fs': ['sheets/pdf'],
  'fastest-levenshtein': ['diagnostic'],
  'pure-rand': ['study'],
  commander: ['command'],
  'csv-stringify': ['command'],
  diff: ['command'],
  'pdfjs-dist': ['sheets/pdf'],
  picocolors: ['command'],
  'node:fs': ['command', 'sheets'],
  'node:fs/promises': ['command', 'sheets'],
  /** The program's own file, with the code that the build kept of it. */
  'node:vm': ['command'],
  'node:os': ['command', 'sheets/pdf'],
  'node:path': ['command', 'sheets'],
  'node:url': ['command', 'sheets/pdf'],
  'node:crypto': ['command', 'sheets/pdf', 'checking'],
  'node:zlib': ['sheets/pdf'],
  'node:stream': ['sheets/pdf'],
  'node:stream/promises': ['sheets/pdf'],
  'node:child_process': ['sheets/pdf', 'comparison'],
  'node:util': ['sheets/pdf', 'comparison', 'command'],
  'node:process': ['sheets/pdf'],
  'node:module': ['command', 'sheets/pdf'],
}

interface Import {
  readonly from: string
  readonly to: string
  readonly types: boolean
}

const files = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter(name => name.endsWith('.ts'))
  .map(name => name.replaceAll('\\', '/'))

/** Every import of a file, told apart by whether it brings types alone. */
function importsOf(file: string): Import[] {
  const source = ts.createSourceFile(file, readFileSync(join(src, file), 'utf8'), ts.ScriptTarget.Latest, true)
  const found: Import[] = []
  const visit = (node: ts.Node): void => {
    if (
      (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) &&
      node.moduleSpecifier &&
      ts.isStringLiteral(node.moduleSpecifier)
    ) {
      found.push({ from: file, to: node.moduleSpecifier.text, types: onlyTypes(node) })
    }
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [to] = node.arguments
      if (to && ts.isStringLiteral(to)) found.push({ from: file, to: to.text, types: false })
    }
    ts.forEachChild(node, visit)
  }
  visit(source)
  return found
}

function onlyTypes(node: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  if (ts.isExportDeclaration(node)) return node.isTypeOnly
  const clause = node.importClause
  if (!clause) return false
  if (clause.isTypeOnly) return true
  const bindings = clause.namedBindings
  return (
    !clause.name &&
    bindings !== undefined &&
    ts.isNamedImports(bindings) &&
    bindings.elements.every(element => element.isTypeOnly)
  )
}

const roomOf = (file: string): string => (file.includes('/') ? (file.split('/')[0] ?? '') : '')
const target = ({ from, to }: Import): string => relative(src, resolve(src, dirname(from), to)).replaceAll('\\', '/')
const all = files.flatMap(importsOf)
const own = all.filter(({ to }) => to.startsWith('.'))
const outside = all.filter(({ to }) => !to.startsWith('.'))

describe('the house', () => {
  it('lets each room import only what the table allows', () => {
    const wrong = own.filter(each => {
      const [room, to] = [roomOf(each.from), roomOf(target(each))]
      const allowed = mayImport[room]
      if (!allowed) return true
      if (room === to && room !== '') return false
      return !(allowed.includes(to) || (each.types && allowed.includes(`${to} (types)`)))
    })
    expect(wrong.map(each => `${each.from} imports ${target(each)}`)).toEqual([])
  })

  it('has no import circle, not even one of types alone', () => {
    const edges = new Map(files.map(file => [file, own.filter(each => each.from === file).map(target)]))
    const done = new Set<string>()
    const cycles: string[] = []
    const walk = (file: string, path: readonly string[]): void => {
      if (path.includes(file)) {
        cycles.push([...path.slice(path.indexOf(file)), file].join(' -> '))
        return
      }
      if (done.has(file)) return
      for (const next of edges.get(file) ?? []) walk(next, [...path, file])
      done.add(file)
    }
    for (const file of files) walk(file, [])
    expect(cycles).toEqual([])
  })

  it('keeps each outside library in its one home', () => {
    const name = (to: string): string =>
      to.startsWith('node:')
        ? to
        : to
            .split('/')
            .slice(0, to.startsWith('@') ? 2 : 1)
            .join('/')
    const wrong = outside.filter(each => {
      const at = homes[name(each.to)]
      return !at?.some(home => (home === '' ? !each.from.includes('/') : each.from.startsWith(`${home}/`)))
    })
    expect([...new Set(wrong.map(each => `${each.from} imports ${each.to}`))]).toEqual([])
  })

  it('imports only libraries that package.json depends on', () => {
    const facts = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
      dependencies: Record<string, string>
      devDependencies: Record<string, string>
    }
    // What is bundled is there at build time; test/package keeps what the published package needs.
    const dependencies = { ...facts.dependencies, ...facts.devDependencies }
    const types = new Set(['mdast', 'hast', 'micromark-util-types'])
    const missing = outside
      .filter(({ to }) => !to.startsWith('node:') && !types.has(to))
      .map(({ to }) =>
        to
          .split('/')
          .slice(0, to.startsWith('@') ? 2 : 1)
          .join('/'),
      )
    expect([...new Set(missing)].filter(to => !(to in dependencies))).toEqual([])
  })

  it('runs no text as code and reads no clock below the command line', () => {
    const wrong = files.filter(file => {
      const text = readFileSync(join(src, file), 'utf8')
      const clock =
        !file.startsWith('command/') && /\bDate\.now\(|new Date\(\)|Math\.random\(|performance\.now\(/.test(text)
      return clock || /\beval\(|new Function\(/.test(text)
    })
    expect(wrong).toEqual([])
  })
})
