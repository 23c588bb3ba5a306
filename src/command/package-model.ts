import { checkingState } from '../checking/checking-state.ts'
import { passportsOf } from '../evaluation/passport.ts'
import { authorText } from '../notebook/author-text.ts'
import type { Assets } from '../sheets/assets.ts'
import type { PackageModel, PackageRecord } from '../sheets/package-model.ts'
import type { Evaluated } from './evaluated.ts'
import type { KeptRecord } from './kept-record.ts'
import { marginsOf } from './margins-of.ts'
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

/** What a package is composed from: the evaluated notebook and how it is issued. Its browser and its proof are not known yet. */
export function packageModel(evaluated: Evaluated, options: TextOptions): PackageModel {
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
    notebook: { ...notebook, path: options.name },
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
