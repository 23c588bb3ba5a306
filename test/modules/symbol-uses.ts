import { calcNotebook } from '../../src/evaluation/calc-notebook.ts'
import { plan } from '../../src/evaluation/plan.ts'
import type { Entity } from '../../src/evaluation/plan-types.ts'
import type { Input, Module, Step } from '../../src/modules/module.ts'
import type { Dimension, System } from '../../src/quantity/types.ts'
import { inputSets } from './input-sets.ts'

/** A symbol as a module prints it in some branch, without the number of a row: what it says, its dimension, its units. */
export interface SymbolUse {
  readonly module: string
  readonly symbol: string
  readonly says: string
  readonly dimension: Dimension
  readonly units: Readonly<Record<System, Set<string>>>
}

/**
 * Every use of a symbol in a module, the inputs first, then in the order of the working. Its combinations of choices and optional
 * inputs are planned until every input and every line of every branch has been met, if need be all of them.
 */
export function symbolUses(module: Module): readonly SymbolUse[] {
  const uses = new Map<string, SymbolUse>()
  const written = [...inputLines(module.inputs), ...stepLines([...module.steps, ...(module.second?.steps ?? [])])]
  const unmet = new Set(written)
  for (const inputs of spread(inputSets(module))) {
    for (const system of ['SI', 'US'] as const)
      for (const named of plan(calcNotebook(module, inputs, system), [module]).names.values())
        if (named.kind === 'number') unmet.delete(addUse(uses, module.id, named, system))
    if (unmet.size === 0) break
  }
  const place = (line: string): number => written.indexOf(line)
  return [...uses].sort(([a], [b]) => place(a) - place(b)).map(([, use]) => use)
}

const line = (name: string, says: string): string => `${name}: ${says}`
const nameOf = (line: string): string => line.slice(0, line.indexOf(':'))

const inputLines = (inputs: Readonly<Record<string, Input>>): readonly string[] =>
  Object.entries(inputs).flatMap(([name, input]) => {
    if (input.kind === 'list') return inputLines(input.fields)
    return input.kind === 'quantity' ? [line(name, input.says)] : []
  })

/** Where numbers choose the side of a branch, the first of two lines of one name stands. */
const stepLines = (steps: readonly Step[]): readonly string[] =>
  steps.flatMap(step => {
    if (step.kind === 'when') {
      const [yes, no] = [stepLines(step.yes), stepLines(step.no)]
      const stands = (line: string): boolean => yes.some(each => nameOf(each) === nameOf(line))
      return [...yes, ...('formula' in step.condition ? no.filter(each => !stands(each)) : no)]
    }
    if (step.kind === 'each' || step.kind === 'pairs') return stepLines(step.steps)
    if (step.kind === 'solve') return Object.values(step.gives).map(given => line(given.name, given.says))
    return step.kind === 'check' ? [] : [line(step.name, step.says)]
  })

/** The same combinations, far apart ones first: neighbours differ least. */
function spread<T>(all: readonly T[]): readonly T[] {
  const stride = [97, 89, 83, 79].find(each => all.length % each !== 0) ?? 1
  return all.map((_, index) => all[(index * stride) % all.length] as T)
}

function addUse(uses: Map<string, SymbolUse>, module: string, entity: Entity, system: System): string {
  const number = entity.row ? `_${entity.row.index + 1}` : ''
  const bare = (text: string): string => (text.endsWith(number) ? text.slice(0, text.length - number.length) : text)
  const { says, dimension, unit } = entity
  const written = line(bare(entity.name), says)
  const key =
    uses.get(written)?.dimension === dimension || !uses.has(written) ? written : `${written} (${dimension.key})`
  const use = uses.get(key) ?? {
    module,
    symbol: bare(entity.symbol),
    says,
    dimension,
    units: { SI: new Set(), US: new Set() },
  }
  use.units[system].add(unit.text)
  uses.set(key, use)
  return written
}
