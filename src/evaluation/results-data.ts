import { diagnosticData } from '../diagnostic/diagnostic-data.ts'
import { blockData } from './block-data.ts'
import type { Results } from './evaluate.ts'
import { scopeData } from './scope-data.ts'
import { numberData, shownData } from './shown-data.ts'
import { entityOf, placeData, valueData } from './value-data.ts'
import type { AssumptionRow, Workings } from './workings.ts'

/** What the record says of itself. */
export interface ResultsAbout {
  /** `undercroft 0.1.0`. */
  readonly tool: string
  /** As it is to be named in the record: no folder of this machine. */
  readonly path: string
  readonly sha256: string
}

/**
 * Every value, step and check as plain data, format 1: what `results` prints and the package carries. `si` is the number in coherent SI
 * at full precision, `shown` what the package prints. What could not be evaluated is absent and explained in `diagnostics`.
 */
export function resultsData(results: Results, workings: Workings, about: ResultsAbout) {
  const { notebook } = results.plan
  return {
    format: 1,
    tool: about.tool,
    notebook: { path: about.path, sha256: about.sha256, title: notebook.title.title, units: notebook.title.units },
    blocks: workings.blocks.filter(block => block.kind !== 'assume').map(block => blockData(results, block)),
    assumptions: workings.blocks.flatMap(block =>
      block.kind === 'assume' ? block.rows.map(row => assumptionData(results, row)) : [],
    ),
    ...scopeData(workings),
    diagnostics: workings.diagnostics.map(fault => diagnosticData(fault, about.path)),
  }
}

/** The record as plain data. */
export type ResultsData = ReturnType<typeof resultsData>

function assumptionData(results: Results, row: AssumptionRow) {
  const entity = entityOf(results, `${row.block}.${row.name}`)
  const value = typeof row.value === 'string' || !entity ? shownData(row.value) : valueData(results, entity, row.value)
  return {
    number: row.number,
    block: row.block,
    name: row.name,
    ...value,
    basis: row.basis,
    status: row.status,
    ...(row.closes ? { closes: row.closes } : {}),
    ...(row.range
      ? { range: { from: numberData(row.range.from), to: numberData(row.range.to), inside: row.range.inside } }
      : {}),
    ...(row.measured === undefined ? {} : { measured: shownData(row.measured) }),
    ...(row.evidence ? { evidence: row.evidence } : {}),
    users: row.users.map(user => user.number),
    place: placeData(row.place),
  }
}
