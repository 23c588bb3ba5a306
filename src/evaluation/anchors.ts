import { linesOf } from './block-lines.ts'
import type { Results } from './evaluate.ts'
import type { Entity, PlannedBlock, PlannedGiven, PlannedLine } from './plan-types.ts'

/** Where a value is made on the page: the anchor to link to and the number to print. */
export interface Origin {
  readonly id: string
  readonly number: string
}

/** Numbers and anchors of everything that is printed. Anchors of values come from names, so that they outlive renumbering. */
export interface Numbering {
  /** By index of block: `4`; `''` for assumptions. */
  readonly blocks: readonly string[]
  readonly lines: ReadonlyMap<PlannedLine, Origin>
  readonly origins: ReadonlyMap<Entity, Origin>
  /** By key of the assumption: `A3`. */
  readonly assumptions: ReadonlyMap<string, Origin>
}

/** An anchor: letters of the key, anything but letters, figures and `_` made a hyphen. */
const anchorOf = (key: string): string => `v-${key.replaceAll(/[^\p{L}\p{N}_]/gu, '-')}`

/** A row of the Given table. What a line works out has its own anchor there, and the row another. */
export const givenAnchor = (block: string, { name, line }: PlannedGiven): string =>
  line ? `g-${anchorOf(`${block}.${name}`)}` : anchorOf(`${block}.${name}`)

export const blockAnchor = (name: string): string => `b-${name}`

/** True where the line was reached and came to something: then it is printed. */
export function isPrinted(line: PlannedLine, slots: Float64Array): boolean {
  if (!line.guards.every(guard => slots[guard] === 1)) return false
  const known = (slot: number): boolean => Number.isFinite(slots[slot])
  switch (line.kind) {
    case 'formula':
    case 'look':
      return known(line.gives.slot)
    case 'solve':
      return line.gives.every(({ entity }) => known(entity.slot))
    case 'check':
      return known(line.slot)
    case 'branch':
      return !line.test || known(line.test.slot)
  }
}

/**
 * Numbers every printed line in the author's order: blocks 1, 2, …, lines 4.01, 4.02, …, a step's lines over the rows of a list
 * 4.03a, 4.03b, …, assumptions A1, A2, ….
 */
export function numberLines(results: Results): Numbering {
  const { plan } = results
  const numbering = {
    blocks: [] as string[],
    lines: new Map<PlannedLine, Origin>(),
    origins: new Map<Entity, Origin>(),
    assumptions: new Map<string, Origin>(),
  }
  let count = 0
  plan.notebook.blocks.forEach((source, index) => {
    const block = plan.blocks[index]
    if (source.kind !== 'assume') count += 1
    numbering.blocks.push(source.kind === 'assume' ? '' : String(count))
    if (block?.kind === 'assume') numberAssumptions(block, numbering)
    else if (block) numberBlock(results, block, { ...numbering, number: String(count), name: source.name.text })
  })
  return numbering
}

function numberAssumptions(
  block: Extract<PlannedBlock, { kind: 'assume' }>,
  into: { assumptions: Map<string, Origin>; origins: Map<Entity, Origin> },
): void {
  for (const { named } of block.rows) {
    const origin = { id: anchorOf(named.key), number: `A${into.assumptions.size + 1}` }
    into.assumptions.set(named.key, origin)
    if (named.kind === 'number') into.origins.set(named, origin)
  }
}

interface Into {
  readonly lines: Map<PlannedLine, Origin>
  readonly origins: Map<Entity, Origin>
  readonly number: string
  readonly name: string
}

function numberBlock(results: Results, block: Exclude<PlannedBlock, { kind: 'assume' }>, into: Into): void {
  const printed = linesOf(block).filter(line => isPrinted(line, results.slots))
  sharedNumbers(printed).forEach((lines, index) => {
    const number = `${into.number}.${String(index + 1).padStart(2, '0')}`
    for (const [row, line] of lines.entries()) numberLine(line, lines.length > 1 ? number + letters(row) : number, into)
  })
  if (block.kind !== 'calc') return
  for (const given of block.given) {
    const { value, line } = given
    if (typeof value !== 'string' && !line && Number.isFinite(results.slots[value.slot]))
      into.origins.set(value, { id: givenAnchor(into.name, given), number: into.number })
  }
}

/** Lines that have one number between them: those of one step over several rows. */
function sharedNumbers(lines: readonly PlannedLine[]): PlannedLine[][] {
  const shared: PlannedLine[][] = []
  for (const line of lines) {
    const before = shared.at(-1)
    if (line.ofStep && before?.[0]?.ofStep === line.ofStep) before.push(line)
    else shared.push([line])
  }
  return shared
}

/** `a`, `b`, … `z`, `aa`, … */
const letters = (index: number): string =>
  (index < 26 ? '' : letters(Math.floor(index / 26) - 1)) + String.fromCharCode(97 + (index % 26))

function numberLine(line: PlannedLine, number: string, into: Into): void {
  const id =
    line.kind === 'formula' || line.kind === 'look'
      ? anchorOf(line.gives.key)
      : `b-${into.name}-${line.kind}-${number.replace('.', '-')}`
  into.lines.set(line, { id, number })
  if (line.kind === 'formula' || line.kind === 'look') into.origins.set(line.gives, { id, number })
  else if (line.kind === 'solve')
    for (const { entity } of line.gives) into.origins.set(entity, { id: anchorOf(entity.key), number })
}
