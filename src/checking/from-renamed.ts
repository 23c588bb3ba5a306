import type { CheckedStep } from './checked-step.ts'

/** A block that was renamed, with the steps at which a tick from before still stands. */
export interface FromRenamed {
  readonly block: string
  readonly was: string
  readonly steps: readonly CheckedStep[]
}

/** Every block in which ticks stand that were made under another name of it, in the order of the package. */
export function fromRenamed(steps: readonly CheckedStep[]): readonly FromRenamed[] {
  const found = new Map<string, FromRenamed>()
  for (const step of steps)
    for (const was of new Set(step.standing.flatMap(({ from }) => from ?? []))) {
      const name = JSON.stringify([step.block, was])
      found.set(name, { block: step.block, was, steps: [...(found.get(name)?.steps ?? []), step] })
    }
  return [...found.values()]
}
