import type { Module, Step } from '../modules/module.ts'

/**
 * Tells whether a module's block can give a value of a name beside its single inputs: a step, in whatever branch, a row's value with
 * its number (`n_2`), or all rows of one as a list (`n`).
 */
export function givesOf(module: Module): (name: string) => boolean {
  const { plain, rows } = namesOf([...module.steps, ...(module.second?.steps ?? [])])
  for (const input of Object.values(module.inputs))
    if (input.kind === 'list') for (const field of Object.keys(input.fields)) rows.add(field)
  return name => plain.has(name) || rows.has(name) || rows.has(name.replace(/_\d+$/, ''))
}

interface Names {
  readonly plain: Set<string>
  readonly rows: Set<string>
}

/** Names that steps give: single values, and those that every row of a list has. */
export function namesOf(steps: readonly Step[]): Names {
  const names: Names = { plain: new Set(), rows: new Set() }
  collect(steps, names, names.plain)
  return names
}

function collect(steps: readonly Step[], names: Names, into: Set<string>): void {
  for (const step of steps) {
    if (step.kind === 'each' || step.kind === 'pairs') collect(step.steps, names, names.rows)
    else if (step.kind === 'when') collect([...step.yes, ...step.no], names, into)
    else if (step.kind === 'solve') for (const { name } of Object.values(step.gives)) into.add(name)
    else if (step.kind !== 'check') into.add(step.name)
  }
}
