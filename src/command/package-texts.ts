import { basename } from 'node:path'
import { passportsOf } from '../evaluation/passport.ts'
import { authorText } from '../notebook/author-text.ts'
import type { Assets } from '../sheets/assets.ts'
import { type Composed, compose } from '../sheets/compose.ts'
import type { PackageModel, PackageRecord } from '../sheets/package-model.ts'
import { type PencilProof, pencilProof } from '../sheets/pencil/pencil-proof.ts'
import type { Evaluated } from './evaluated.ts'
import { sha256 } from './sha256.ts'

/** The package's two HTML texts and what the pencil proof found on the page. */
export interface PackageTexts extends Composed {
  readonly proof: PencilProof
}

export interface TextOptions {
  readonly version: string
  readonly command: string
  readonly draft: boolean
  readonly paper: 'A4' | 'letter'
  readonly date: Date | undefined
  readonly browser?: PackageRecord['browser']
  readonly assets: Assets
}

/** Composes the package, has the independent reader recompute its page, and composes it again with the count on its cover. */
export function packageTexts(evaluated: Evaluated, options: TextOptions): PackageTexts {
  const model = modelOf(evaluated, options)
  const proof = pencilProof(compose(model, options.assets).screen)
  const { lines, closing, notPencil } = proof
  return { ...compose({ ...model, proof: { lines, closing, notPencil } }, options.assets), proof }
}

function modelOf(evaluated: Evaluated, options: TextOptions): PackageModel {
  const { notebook, workings, results, bytes } = evaluated
  const passports = passportsOf(results, workings)
  const record: PackageRecord = {
    tool: 'undercroft',
    version: options.version,
    sha256: sha256(bytes),
    command: options.command,
    modules: passports.map(({ module, version, title }) => ({
      id: module,
      version,
      title,
      ...codeOf(evaluated, module),
    })),
    ...(options.browser ? { browser: options.browser } : {}),
  }
  return {
    // No folder of this machine goes into a package.
    notebook: { ...notebook, path: basename(notebook.path) },
    workings,
    body: authorText(notebook.tree),
    record,
    passports,
    draft: options.draft,
    paper: options.paper,
    date: options.date ? options.date.toISOString().slice(0, 10) : '',
  }
}

function codeOf(evaluated: Evaluated, id: string): { code?: string } {
  const block = evaluated.workings.blocks.find(each => each.kind === 'calc' && each.module === id)
  return block?.kind === 'calc' && block.code ? { code: block.code } : {}
}
