import { exceededOf, relativeDifference, truth } from './judge-blocks.ts'
import { percentText } from './percent-text.ts'
import type { Entity, PlannedLine, PlannedSecond } from './plan-types.ts'
import { type PrintContext, printedOf, siOf } from './print-context.ts'
import { pick } from './print-lines.ts'
import type { ComparisonLine, Line, SecondWorking, Shared } from './workings.ts'

/** The second method's own working, its answers beside the first, and what the two share. */
export function printSecond(
  context: PrintContext,
  second: PlannedSecond,
  printed: ReadonlyMap<PlannedLine, Line>,
): SecondWorking {
  const { title, says, otherwise } = second
  const lines = pick(second.lines, printed)
  const head = { title, says, lines, comparisons: [], shares: [] }
  if (truth(second.applies, context.results.slots) !== true) return { ...head, absent: otherwise }
  const refused = exceededOf(second.limits, context.results.slots).find(({ limit }) => limit.otherwise === 'refuse')
  if (refused) return { ...head, absent: `left out here, outside the limit that ${refused.limit.says}` }
  return {
    ...head,
    comparisons: comparisonsOf(context, second),
    shares: second.shares.map(entity => shareOf(context, entity)),
  }
}

function comparisonsOf(context: PrintContext, second: PlannedSecond): ComparisonLine[] {
  return second.comparisons.flatMap(({ compare, first, second: other, applies }) => {
    const difference = relativeDifference(siOf(context, first), siOf(context, other))
    if (truth(applies, context.results.slots) !== true || !Number.isFinite(difference)) return []
    return {
      says: compare.says,
      first: printedOf(context, first),
      second: printedOf(context, other),
      difference,
      differenceShown: percentText(difference),
      band: compare.band,
      bandShown: percentText(compare.band),
      agrees: difference <= compare.band,
    }
  })
}

function shareOf(context: PrintContext, entity: Entity): Shared {
  const { symbol, says } = entity
  const origin = context.numbering.origins.get(entity)
  if (!origin) return { symbol, says }
  return entity.origin === 'input'
    ? { symbol, says, to: origin.id }
    : { symbol, says, to: origin.id, number: origin.number }
}
