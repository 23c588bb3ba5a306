import { basename } from 'node:path'
import { exitStatus } from './exit-status.ts'
import { recordPath } from './kept-record.ts'
import { Stopped } from './stopped.ts'

type File = readonly [name: string, bytes: Uint8Array]

/** The attached files by what they are. The results say what the notebook is called; other files are called after it. */
export function partsOf(path: string, attachments: ReadonlyMap<string, Uint8Array>) {
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

/** The refusal of a file that is no package. */
export const noPackage = (path: string, why: string): Stopped =>
  new Stopped(
    exitStatus.called,
    `\`${path}\` is no package that can be proved: ${why}`,
    'Name a PDF or HTML file that `undercroft issue` wrote',
  )

/** An object of JSON; empty where the text is none. */
export function parsed(text: string): Record<string, unknown> {
  try {
    return Object(JSON.parse(text)) as Record<string, unknown>
  } catch {
    return {}
  }
}
