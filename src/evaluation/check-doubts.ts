import { exceededOf, isApart, secondLimitsOf } from './judge-blocks.ts'
import type { PlannedBlock, PlannedCalc, PlannedLine } from './plan-types.ts'
import type { Doubt } from './workings.ts'

/**
 * Why checks of calculations, once satisfied, may not be leant on. A limit casts doubt on the checks of its own method; the first
 * method's on those checks of the second that rest on its steps as well. Where the two methods disagree, both are in doubt.
 */
export function doubtsOf(
  blocks: readonly (PlannedBlock | undefined)[],
  slots: Float64Array,
): ReadonlyMap<PlannedLine, readonly Doubt[]> {
  return new Map(blocks.flatMap(block => (block?.kind === 'calc' ? doubtsIn(block, slots) : [])))
}

function doubtsIn(block: PlannedCalc, slots: Float64Array): (readonly [PlannedLine, readonly Doubt[]])[] {
  const { second } = block
  const apart: readonly Doubt[] = second?.comparisons.some(each => isApart(each, slots)) ? ['methods differ'] : []
  const firstOut = exceededOf(block.limits, slots).length > 0
  const secondOut = exceededOf(secondLimitsOf(block, slots), slots).length > 0
  const told = (line: PlannedLine, out: boolean): readonly [PlannedLine, readonly Doubt[]] => [
    line,
    out ? ['outside limits', ...apart] : apart,
  ]
  return [
    ...block.lines.map(line => told(line, firstOut)),
    ...(second?.lines ?? []).map(line => told(line, secondOut || (firstOut && second?.leaning.has(line) === true))),
  ]
}
