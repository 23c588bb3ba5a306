import { basename } from 'node:path'
import { readPdf } from '../sheets/pdf/index.ts'
import { evaluateBytes } from './evaluated.ts'
import { exitStatus } from './exit-status.ts'
import { type KeptRecord, keptOf, recordPath } from './kept-record.ts'
import type { IssueFacts } from './package-attachments.ts'
import type { OldSide } from './since-revision.ts'
import { Stopped } from './stopped.ts'

/** An issued package taken apart. */
export interface ReadPackage {
  readonly kind: 'PDF' | 'HTML'
  readonly bytes: Uint8Array
  /** Name and bytes of the attached notebook. */
  readonly name: string
  readonly notebook: Uint8Array
  readonly results: string
  readonly facts: IssueFacts
  /** The older notebook it is set against, where it is. */
  readonly old?: OldSide
  /** The checking record, where the package carries one. */
  readonly kept?: KeptRecord
  /** The pieces of text of each page; the HTML is one page. */
  readonly pages: readonly (readonly string[])[]
}

/** So large a package is not made; a file of another kind may be. */
export const aPackage = { most: 256_000_000, what: 'a package' }

const isPdf = (bytes: Uint8Array): boolean => Buffer.from(bytes.subarray(0, 1024)).includes('%PDF-')

/** Whether these bytes are a package rather than a notebook: a PDF, or a page of HTML. */
export const isPackage = (bytes: Uint8Array): boolean =>
  isPdf(bytes) || /^\ufeff?\s*<!doctype html/i.test(Buffer.from(bytes.subarray(0, 100)).toString('utf8'))

/** Takes an issued package apart. Refuses what is no package, or carries no notebook. */
export async function readPackage(path: string, bytes: Uint8Array): Promise<ReadPackage> {
  const read = isPdf(bytes) ? await readPdf(bytes) : readHtml(Buffer.from(bytes).toString('utf8'))
  if ('unread' in read) throw noPackage(path, read.unread)
  const { pages, attachments } = read
  const { results, issued, source, older, record } = partsOf(path, attachments)
  const facts = factsOf(path, Buffer.from(issued).toString('utf8'))
  const [name, notebook] = source
  return {
    kind: isPdf(bytes) ? 'PDF' : 'HTML',
    bytes,
    name,
    notebook,
    results: Buffer.from(results).toString('utf8'),
    facts,
    ...(older && facts.since ? { old: oldOf(older[1], facts.since, facts.sinceSays) } : {}),
    ...(record ? { kept: keptOf(record[0], { notebook: name, bytes: record[1] }) } : {}),
    pages,
  }
}

const oldOf = (bytes: Uint8Array, label: string, says: unknown): OldSide => ({
  label,
  evaluated: evaluateBytes(bytes, label),
  says: Array.isArray(says) ? says.map(String) : [],
})

type File = readonly [name: string, bytes: Uint8Array]

/** The attached files by what they are. The results say what the notebook is called; other files are called after it. */
function partsOf(path: string, attachments: ReadonlyMap<string, Uint8Array>) {
  const file = (name: string): File | undefined => {
    const bytes = attachments.get(name)
    return bytes && [name, bytes]
  }
  const [results, issued] = [file('results.json'), file('issue.json')]
  const name = results && notebookIn(Buffer.from(results[1]).toString('utf8'))
  const source = (name === undefined ? undefined : file(name)) ?? [...attachments].find(([each]) => isOther(each))
  const missing = [
    ...(source ? [] : ['its notebook']),
    ...(results ? [] : ['its results']),
    ...(issued ? [] : ['how it was issued']),
  ]
  if (!source || !results || !issued) throw noPackage(path, `it does not carry ${missing.join(', nor ')}`)
  const older = file(`since-${source[0]}`)
  const record = file(basename(recordPath(source[0])))
  return { results: results[1], issued: issued[1], source, older, record }
}

/** A file that is neither data of ours nor called after another. */
const isOther = (name: string): boolean => !/^(?:results|issue)\.json$|\.checked\.yaml$|^since-/.test(name)

/** The name of the notebook in the results' own words; nothing where they cannot be read. */
function notebookIn(results: string): string | undefined {
  const { notebook } = parsed(results)
  const { path } = Object(notebook) as { readonly path?: unknown }
  return typeof path === 'string' ? path : undefined
}

const noPackage = (path: string, why: string): Stopped =>
  new Stopped(
    exitStatus.called,
    `\`${path}\` is no package that can be proved: ${why}`,
    'Name a PDF or HTML file that `undercroft issue` wrote',
  )

function factsOf(path: string, text: string): IssueFacts {
  const facts = parsed(text)
  const { format, command, tool, paper, draft, date } = facts
  const well = format === 1 && typeof command === 'string' && typeof tool === 'string' && typeof draft === 'boolean'
  const dated = date === undefined || (typeof date === 'string' && !Number.isNaN(Date.parse(date)))
  if (!well || !dated || (paper !== 'A4' && paper !== 'letter'))
    throw noPackage(path, 'how it was issued cannot be read')
  return facts as unknown as IssueFacts
}

function parsed(text: string): Record<string, unknown> {
  try {
    return Object(JSON.parse(text)) as Record<string, unknown>
  } catch {
    return {}
  }
}

/** Text and attachments of the HTML, read from its characters: attachments are links that hold their file. */
function readHtml(html: string): Pick<ReadPackage, 'pages'> & { attachments: ReadonlyMap<string, Uint8Array> } {
  const links = html.matchAll(
    /<a class="attachment" href="data:[\w/+.-]+;base64,([A-Za-z0-9+/=]*)" download="([^"]*)">/g,
  )
  const attachments = new Map(
    [...links].map(([, data = '', name = '']) => [unescaped(name), Buffer.from(data, 'base64')]),
  )
  return { attachments, pages: [htmlText(html)] }
}

/** As our HTML writes characters that would end an attribute. */
const unescaped = (text: string): string =>
  text.replace(/&#x([0-9A-Fa-f]+);/g, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)))

/** The pieces of text of an HTML file, whatever stands in its tags left aside. */
export const htmlText = (html: string): readonly string[] =>
  html
    .replace(/<style>[\s\S]*?<\/style>/g, '')
    .split(/<[^>]*>/)
    .map(piece => piece.trim())
    .filter(piece => piece !== '')
