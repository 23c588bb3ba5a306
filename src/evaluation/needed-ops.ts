import type { Op } from './plan-types.ts'

/** The ops, those of second methods that some first value rests on no longer marked as second: the author refers to what they give. */
export function neededOps(ops: readonly Op[]): readonly Op[] {
  const first = ops.filter(op => !op.second)
  const needed = neededFor(
    first.flatMap(op => op.reads),
    ops,
  )
  return ops.map(op => (op.second && needed.has(op) ? { ...op, second: false } : op))
}

/** Those of the ops that what comes to stand in the slots rests on. */
export function neededFor(slots: Iterable<number>, ops: readonly Op[]): ReadonlySet<Op> {
  const asked = new Set(slots)
  const needed = new Set<Op>()
  // What writes a slot may stand after another that writes it, so that one pass from the end is not enough.
  for (let before = -1; before !== needed.size; ) {
    before = needed.size
    for (const op of ops.toReversed()) {
      if (needed.has(op) || !op.writes.some(slot => asked.has(slot))) continue
      needed.add(op)
      for (const slot of op.reads) asked.add(slot)
    }
  }
  return needed
}
