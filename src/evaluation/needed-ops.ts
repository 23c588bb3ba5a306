import type { Op } from './plan-types.ts'

/** The ops, those of second methods that some first value rests on no longer marked as second: the author refers to what they give. */
export function neededOps(ops: readonly Op[]): readonly Op[] {
  const needed = new Set<Op>(ops.filter(op => !op.second))
  const reads = new Set([...needed].flatMap(op => op.reads))
  // What writes a slot may stand after another that writes it, so that one pass from the end is not enough.
  for (let before = -1; before !== needed.size; ) {
    before = needed.size
    for (const op of ops.toReversed()) {
      if (needed.has(op) || !op.writes.some(slot => reads.has(slot))) continue
      needed.add(op)
      for (const slot of op.reads) reads.add(slot)
    }
  }
  return ops.map(op => (op.second && needed.has(op) ? { ...op, second: false } : op))
}
