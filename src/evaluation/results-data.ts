import { diagnosticData } from '../diagnostic/diagnostic-data.ts'
import { dimensionName } from '../quantity/dimension-names.ts'
import type { Shown } from '../quantity/types.ts'
import { secondLinesOf } from './block-lines.ts'
import type { Results } from './evaluate.ts'
import type { Entity } from './plan-types.ts'
import { scopeData } from './scope-data.ts'
import { numberData, shownData } from './shown-data.ts'
import { substituted } from './substituted.ts'
import type {
  AssumptionRow,
  BlockWorking,
  CalcWorking,
  CheckLine,
  FormulaLine,
  GivenRow,
  LimitLine,
  Line,
  LookLine,
  Reference,
  Workings,
} from './workings.ts'

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

export type ResultsData = ReturnType<typeof resultsData>

type Place = { readonly line: number; readonly column: number }
const placeData = ({ line, column }: Place): Place => ({ line, column })

function blockData(results: Results, block: Exclude<BlockWorking, { kind: 'assume' }>) {
  const calc = block.kind === 'calc' ? block : undefined
  return {
    name: block.name,
    kind: block.kind,
    ...(calc ? { module: calc.module, version: calc.version, title: calc.title } : {}),
    number: block.number,
    place: placeData(block.place),
    complete: block.complete,
    ...(calc
      ? { inputs: Object.fromEntries(calc.given.map(row => [row.name, givenData(results, block.name, row)])) }
      : {}),
    outputs: outputsData(results, block.name, block.lines),
    steps: block.lines.filter(line => line.kind !== 'check').map(stepData),
    checks: block.checks.map(line => ({ ...checkData(line), ...methodData(block, line) })),
    ...(calc?.second ? { second: secondData(results, calc) } : {}),
    ...(calc ? { limits: calc.limits.map(limitData), cautions: calc.cautions } : {}),
  }
}

const limitData = ({ says, kept, refuses, method, reference }: LimitLine) => ({
  says,
  kept,
  refuses,
  method,
  ...sourceData(reference),
})

function entityOf(results: Results, key: string): Entity | undefined {
  const named = results.plan.names.get(key)
  return named?.kind === 'number' ? named : undefined
}

function valueData(results: Results, entity: Entity, shown: Shown) {
  return {
    symbol: entity.symbol,
    si: results.slots[entity.slot] ?? Number.NaN,
    dimension: dimensionName(entity.dimension),
    ...numberData(shown),
  }
}

function givenData(results: Results, block: string, row: GivenRow) {
  const base = { says: row.says, from: row.from, default: row.taken, place: placeData(row.place) }
  if (typeof row.value === 'string') return { ...base, word: row.value }
  const entity = entityOf(results, `${block}.${row.name}`)
  return entity ? { ...valueData(results, entity, row.value), ...base } : base
}

/** Values by name, each with the step that gives it. */
function outputsData(results: Results, block: string, lines: readonly Line[]) {
  const outputs: Record<string, ReturnType<typeof valueData> & { says: string; step: string }> = {}
  const add = (name: string, shown: Shown, about: { says: string; step: string }): void => {
    const entity = entityOf(results, `${block}.${name}`)
    if (entity?.origin === 'step') outputs[name] = { ...valueData(results, entity, shown), ...about }
  }
  for (const line of lines) {
    if (line.kind === 'formula' || line.kind === 'look')
      add(line.name, line.result, { says: meaningOf(line), step: line.number })
    else if (line.kind === 'solve')
      for (const given of line.gives) add(given.name, given.printed.shown, { says: given.says, step: line.number })
  }
  return outputs
}

/** What a value is; the formula where the author gave it no remark. */
const meaningOf = (line: FormulaLine | LookLine): string =>
  line.says || (line.kind === 'formula' ? line.working.formula.text : '')

const sourceData = (reference: Reference | undefined) => (reference ? { source: reference } : {})

function stepData(line: Exclude<Line, CheckLine>) {
  const base = {
    number: line.number,
    kind: line.kind,
    says: line.says,
    ...(line.row ? { row: line.row } : {}),
    ...sourceData(line.reference),
  }
  switch (line.kind) {
    case 'formula':
      return { ...base, name: line.name, ...substituted(line.working), result: numberData(line.result) }
    case 'look':
      return {
        ...base,
        name: line.name,
        table: line.title,
        interpolations: line.interpolations.map(({ working, result }) => ({
          ...substituted(working),
          result: numberData(result),
        })),
        result: numberData(line.result),
      }
    case 'branch':
      return {
        ...base,
        holds: line.holds,
        ...(line.working ? substituted(line.working) : { because: line.because ?? '' }),
      }
    case 'solve':
      return {
        ...base,
        method: line.title,
        verified: line.verified,
        gives: line.gives.map(({ name, printed }) => ({ name, ...numberData(printed.shown) })),
      }
  }
}

function checkData(line: CheckLine) {
  return {
    number: line.number,
    name: line.name,
    says: line.says,
    ...substituted(line.working),
    ...(line.demand ? { demand: numberData(line.demand) } : {}),
    ...(line.capacity ? { capacity: numberData(line.capacity) } : {}),
    ...(line.ratio ? { ratio: line.ratio.value } : {}),
    satisfied: line.satisfied,
    ...doubtsData(line),
    ...sourceData(line.reference),
  }
}

/** Which method of a calculation makes the check. */
const methodData = (block: BlockWorking, line: CheckLine) =>
  block.kind === 'calc' ? { method: secondLinesOf(block).includes(line) ? 'second' : 'first' } : {}

/** What speaks against a check, as two truths: alike in every record of checks. */
export const doubtsData = ({ doubts }: CheckLine) => ({
  outside_limits: doubts.includes('outside limits'),
  methods_differ: doubts.includes('methods differ'),
})

function secondData(results: Results, block: CalcWorking) {
  const { second } = block
  if (!second) return {}
  const compared = second.comparisons.map(({ says, first, second: other, difference, band, agrees }) => ({
    says,
    first: { symbol: first.symbol, ...numberData(first.shown) },
    second: { symbol: other.symbol, ...numberData(other.shown) },
    difference,
    band,
    agrees,
  }))
  return {
    title: second.title,
    ...(second.absent ? { absent: second.absent } : {}),
    outputs: outputsData(results, block.name, second.lines),
    steps: second.lines.filter(line => line.kind !== 'check').map(stepData),
    comparisons: compared,
    shares: second.shares.map(({ symbol, says, number }) => `${symbol}${number ? ` of ${number}` : ''} (${says})`),
  }
}

function assumptionData(results: Results, row: AssumptionRow) {
  const entity = entityOf(results, `${row.block}.${row.name}`)
  const value =
    typeof row.value === 'string' || !entity ? { word: String(row.value) } : valueData(results, entity, row.value)
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
