import { readPdf } from '../sheets/pdf/index.ts'
import { evaluateBytes } from './evaluated.ts'
import { type KeptRecord, keptOf } from './kept-record.ts'
import type { IssueFacts } from './package-attachments.ts'
import { noPackage, parsed, partsOf } from './package-parts.ts'
import { readHtml } from './read-html.ts'
import type { OldSide } from './since-revision.ts'

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
    ...(older && facts.since ? { old: await oldOf(older[1], facts.since, facts.sinceSays) } : {}),
    ...(record ? { kept: keptOf(record[0], { notebook: name, bytes: record[1] }) } : {}),
    pages,
  }
}

const oldOf = async (bytes: Uint8Array, label: string, says: unknown): Promise<OldSide> => ({
  label,
  evaluated: await evaluateBytes(bytes, label),
  says: Array.isArray(says) ? says.map(String) : [],
})

function factsOf(path: string, text: string): IssueFacts {
  const facts = parsed(text)
  const { format, command, tool, paper, draft, date } = facts
  const well = format === 1 && typeof command === 'string' && typeof tool === 'string' && typeof draft === 'boolean'
  const dated = date === undefined || (typeof date === 'string' && !Number.isNaN(Date.parse(date)))
  if (!well || !dated || (paper !== 'A4' && paper !== 'letter'))
    throw noPackage(path, 'how it was issued cannot be read')
  return facts as unknown as IssueFacts
}
