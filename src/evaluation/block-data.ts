import type { Shown } from '../quantity/types.ts'
import { secondLinesOf } from './block-lines.ts'
import type { Results } from './evaluate.ts'
import { checkData, sourceData, stepData } from './line-data.ts'
import { numberData } from './shown-data.ts'
import { entityOf, placeData, valueData } from './value-data.ts'
import type {
  BlockWorking,
  CalcWorking,
  CheckLine,
  FormulaLine,
  GivenRow,
  LimitLine,
  Line,
  LookLine,
} from './workings.ts'

/** A calculation or work block as plain data: inputs, outputs, steps, checks, second method, limits and cautions. */
export function blockData(results: Results, block: Exclude<BlockWorking, { kind: 'assume' }>) {
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

/** Which method of a calculation makes the check. */
const methodData = (block: BlockWorking, line: CheckLine) =>
  block.kind === 'calc' ? { method: secondLinesOf(block).includes(line) ? 'second' : 'first' } : {}

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
