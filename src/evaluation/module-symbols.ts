import type { Input, Module, Step } from '../modules/module.ts'

/** The symbol of each input, field and step of a module by its name, for sentences that name them: a row's without its number. */
export function moduleSymbols(module: Module): ReadonlyMap<string, string> {
  const symbols = new Map<string, string>()
  addInputs(module.inputs, symbols)
  addSteps([...module.steps, ...(module.second?.steps ?? [])], symbols)
  return symbols
}

function addInputs(inputs: Readonly<Record<string, Input>>, symbols: Map<string, string>): void {
  for (const [name, input] of Object.entries(inputs)) {
    if (input.kind === 'list') addInputs(input.fields, symbols)
    else if (input.kind === 'quantity') symbols.set(name, input.symbol ?? name)
  }
}

function addSteps(steps: readonly Step[], symbols: Map<string, string>): void {
  for (const step of steps) {
    if (step.kind === 'when') addSteps([...step.yes, ...step.no], symbols)
    else if (step.kind === 'each' || step.kind === 'pairs') addSteps(step.steps, symbols)
    else if (step.kind === 'solve') for (const given of Object.values(step.gives)) addOne(given, symbols)
    else if (step.kind !== 'check') addOne(step, symbols)
  }
}

/** The first of two sides of a branch stands, as it does in the working. */
function addOne({ name, symbol = name }: { name: string; symbol?: string }, symbols: Map<string, string>): void {
  if (!symbols.has(name)) symbols.set(name, symbol)
}
