import { basename } from 'node:path'
import { checkingState } from '../checking/checking-state.ts'
import { passportsOf } from '../evaluation/passport.ts'
import { authorText } from '../notebook/author-text.ts'
import type { Assets } from '../sheets/assets.ts'
import type { Attachment } from '../sheets/attachment.ts'
import { type Composed, compose, composeScreen } from '../sheets/compose.ts'
import type { PackageModel, PackageRecord } from '../sheets/package-model.ts'
import { type PencilProof, pencilProof } from '../sheets/pencil/pencil-proof.ts'
import type { Evaluated } from './evaluated.ts'
import type { KeptRecord } from './kept-record.ts'
import { marginsOf } from './margins-of.ts'
import { type IssueFacts, packageAttachments } from './package-attachments.ts'
import { rangeCharts } from './range-charts.ts'
import { sha256 } from './sha256.ts'
import { type OldSide, sinceRevision } from './since-revision.ts'

export interface TextOptions {
  readonly version: string
  /** Name of the notebook's file, as it is attached. */
  readonly name: string
  readonly command: string
  readonly draft: boolean
  readonly paper: 'A4' | 'letter'
  readonly date: Date | undefined
  /** The older notebook that the package is set against. */
  readonly old?: OldSide
  /** The checking record beside the notebook, where there is one. */
  readonly kept?: KeptRecord
  readonly assets: Assets
}

/** A package whose page was recomputed by the independent reader, to be composed with that count on its cover. */
export interface ProvedPackage {
  /** Formulas of the author's text that could not be set; they stand on the page as typed. */
  readonly faults: Composed['faults']
  readonly count: Pick<PencilProof, 'lines' | 'closing'>
  /** Composes the package, naming the browser that prints it, if one does; with what travels inside it. */
  readonly compose: (browser?: PackageRecord['browser']) => Composed & { readonly attachments: readonly Attachment[] }
  /** Composes the page for the screen alone, printed by nothing. */
  readonly screen: () => string
}

/** Composes the package and has the independent reader recompute its page. Throws where a printed line does not close: that is our fault. */
export function provePackage(evaluated: Evaluated, options: TextOptions): ProvedPackage {
  const model = modelOf(evaluated, options)
  const { screen, faults } = composeScreen(model, options.assets)
  const proof = pencilProof(screen)
  refuseOpenLines(proof)
  const { lines, closing, notPencil } = proof
  const proved = { ...model, proof: { lines, closing, notPencil } }
  const attached = (browser?: PackageRecord['browser']): readonly Attachment[] =>
    packageAttachments(evaluated, {
      name: options.name,
      facts: factsOf(options, browser),
      ...(options.kept ? { kept: options.kept } : {}),
      ...(options.old ? { old: options.old } : {}),
    })
  return {
    count: { lines, closing },
    faults,
    compose: browser => {
      const record = { ...model.record, ...(browser ? { browser } : {}) }
      const attachments = attached(browser)
      return { ...compose({ ...proved, record, attachments }, options.assets), attachments }
    },
    screen: () => composeScreen({ ...proved, attachments: attached() }, options.assets).screen,
  }
}

function factsOf(
  { version, command, draft, paper, date, old }: TextOptions,
  browser: PackageRecord['browser'],
): IssueFacts {
  return {
    format: 1,
    tool: `undercroft ${version}`,
    command,
    draft,
    paper,
    ...(date ? { date: date.toISOString() } : {}),
    ...(old ? { since: old.label } : {}),
    ...(browser ? { browser: { name: browser.name, version: browser.version, pinned: browser.pinned } } : {}),
  }
}

function refuseOpenLines({ lines, closing, failing }: PencilProof): void {
  if (closing === lines) return
  const first = failing
    .slice(0, 5)
    .map(({ number, printed, recomputed }) => `  ${number}: printed ${printed}, recomputed ${recomputed}`)
  throw new Error(`${lines - closing} of ${lines} printed lines do not close:\n${first.join('\n')}`)
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
  }
  return {
    // No folder of this machine goes into a package.
    notebook: { ...notebook, path: basename(notebook.path) },
    workings,
    body: authorText(notebook.tree),
    record,
    passports,
    ...marginsOf(evaluated),
    ranges: rangeCharts(evaluated),
    ...(options.old ? { since: sinceRevision(options.old, evaluated) } : {}),
    ...(options.kept ? { checking: checkingState(workings, options.kept.record) } : {}),
    draft: options.draft,
    paper: options.paper,
    date: options.date ? options.date.toISOString().slice(0, 10) : '',
  }
}

function codeOf(evaluated: Evaluated, id: string): { code?: string } {
  const block = evaluated.workings.blocks.find(each => each.kind === 'calc' && each.module === id)
  return block?.kind === 'calc' && block.code ? { code: block.code } : {}
}
