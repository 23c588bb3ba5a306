import { basename } from 'node:path'
import { resultsData } from '../evaluation/results-data.ts'
import type { PdfAttachment } from '../sheets/pdf/index.ts'
import type { Evaluated } from './evaluated.ts'
import { sha256 } from './sha256.ts'

/** What is attached inside a package's PDF: its notebook as it was read, and its results as data. */
export function packageAttachments(
  { bytes, results, workings }: Evaluated,
  { file, version }: { readonly file: string; readonly version: string },
): readonly PdfAttachment[] {
  const name = file === '-' ? 'notebook.md' : basename(file)
  const about = { tool: `undercroft ${version}`, path: name, sha256: sha256(bytes) }
  const data = JSON.stringify(resultsData(results, workings, about), null, 2)
  return [
    {
      name,
      bytes,
      mime: 'text/markdown',
      relationship: 'Source',
      description: 'The notebook this package was made from',
    },
    {
      name: 'results.json',
      bytes: Buffer.from(`${data}\n`),
      mime: 'application/json',
      relationship: 'Data',
      description: 'Every value, step and check of this package',
    },
  ]
}
