import { checkingState } from '../checking/checking-state.ts'
import { modulesUsed } from '../evaluation/passport.ts'
import { authorText } from '../notebook/author-text.ts'
import type { Assets } from '../sheets/assets.ts'
import type { EarlyModel, PackageRecord } from '../sheets/package-model.ts'
import type { Evaluated } from './evaluated.ts'
import type { KeptRecord } from './kept-record.ts'
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

/** What a package is composed from: the evaluated notebook and how it is issued. Its browser, its proof and what is long in the finding are not known yet. */
export function earlyModel(evaluated: Evaluated, options: TextOptions): EarlyModel {
  const { notebook, workings, results, bytes } = evaluated
  const record: PackageRecord = {
    tool: 'undercroft',
    version: options.version,
    sha256: sha256(bytes),
    command: options.command,
    modules: modulesUsed(results).map(({ id, version, title }) => ({ id, version, title, ...codeOf(evaluated, id) })),
  }
  return {
    // No folder of this machine goes into a package.
    notebook: { ...notebook, path: options.name },
    workings,
    body: authorText(notebook.tree),
    record,
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
