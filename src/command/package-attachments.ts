import { basename } from 'node:path'
import { resultsData } from '../evaluation/results-data.ts'
import type { Attachment } from '../sheets/attachment.ts'
import type { PackageRecord } from '../sheets/package-model.ts'
import type { Evaluated } from './evaluated.ts'
import type { KeptRecord } from './kept-record.ts'
import { sha256 } from './sha256.ts'
import type { OldSide } from './since-revision.ts'

/** How a package was issued, as `issue.json` holds it: with the notebook it is all that is needed to make the package again. */
export interface IssueFacts {
  readonly format: 1
  readonly tool: string
  readonly command: string
  readonly draft: boolean
  readonly paper: 'A4' | 'letter'
  /** Of the package; absent where the notebook has none. */
  readonly date?: string
  /** The revision it is set against: that notebook is attached as well. */
  readonly since?: string
  /** What is to be said of that revision besides: other editions of the tool and its modules. */
  readonly sinceSays?: readonly string[]
  /** That printed the PDF; absent where none was made. */
  readonly browser?: PackageRecord['browser']
}

/** What is attached inside a package: its notebook as it was read, its results as data, and how it was issued. */
export function packageAttachments(
  { bytes, results, workings }: Evaluated,
  {
    name,
    facts,
    kept,
    old,
  }: { readonly name: string; readonly facts: IssueFacts; readonly kept?: KeptRecord; readonly old?: OldSide },
): readonly Attachment[] {
  const about = { tool: facts.tool, path: name, sha256: sha256(bytes) }
  return [
    {
      name,
      bytes,
      mime: 'text/markdown',
      relationship: 'Source',
      description: 'The notebook this package was made from',
    },
    json('results.json', resultsData(results, workings, about), 'Every value, step and check of this package'),
    json('issue.json', facts, 'How this package was issued'),
    ...(kept ? [record(kept)] : []),
    ...(old ? [older(name, old)] : []),
  ]
}

const record = ({ path, bytes }: KeptRecord): Attachment => ({
  name: basename(path),
  bytes,
  mime: 'application/yaml',
  relationship: 'Supplement',
  description: 'The checking record of this package',
})

const older = (name: string, { label, evaluated }: OldSide): Attachment => ({
  name: `since-${name}`,
  bytes: evaluated.bytes,
  mime: 'text/markdown',
  relationship: 'Supplement',
  description: `The notebook of ${label}, against which this package marks its changes`,
})

const json = (name: string, data: object, description: string): Attachment => ({
  name,
  bytes: Buffer.from(`${JSON.stringify(data, null, 2)}\n`),
  mime: 'application/json',
  relationship: 'Data',
  description,
})
