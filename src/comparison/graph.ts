import { linesOf } from '../evaluation/block-lines.ts'
import type { Entity, Plan, PlannedCalc, PlannedLine, Points } from '../evaluation/plan-types.ts'
import { usedBy } from '../evaluation/used-by.ts'
import { restOf } from './edit.ts'
import { lineplan, operandsOf } from './line-plan.ts'
import type { Naming } from './naming.ts'

/** A value, a word, a table or a line: how it is planned, and what it uses. */
interface GraphNode {
  readonly planned: string[]
  readonly uses: Set<string>
}

/** What rests on what in one notebook, by the identities that both share. */
export type Graph = ReadonlyMap<string, GraphNode>

/** The node of everything that is given to a calc block: whether its lines are reached at all hangs on all of it. */
export const givenNode = (block: string): string => `given ${block}`

/**
 * The graph of a plan. A node's `planned` holds everything by which it is printed save the numbers it uses: where it is the same in both
 * notebooks and nothing that it uses moved, the node cannot have moved.
 */
export function graphOf(plan: Plan, naming: Naming): Graph {
  const nodes = new Map<string, GraphNode>()
  const build: Build = { plan, naming, nodes, entities: new Set(), every: everyLine(plan) }
  for (const named of plan.names.values()) {
    if (named.kind === 'number') addEntity(build, named)
    else if (named.kind === 'word') add(build, naming.key(named.key), { planned: [named.text], uses: [] })
    else if (named.kind === 'points') add(build, naming.key(named.key), { planned: [pointsText(named)], uses: [] })
  }
  for (const block of plan.blocks) {
    if (block?.kind === 'calc') addCalc(build, block)
    if (block) for (const line of linesOf<PlannedLine>(block)) addLine(build, line)
  }
  return nodes
}

interface Build {
  readonly plan: Plan
  readonly naming: Naming
  readonly nodes: Map<string, GraphNode>
  readonly entities: Set<Entity>
  readonly every: string
}

/** What the digits of every line hang on. */
const everyLine = ({ notebook: { title }, system }: Plan): string => `${title.figures} ${system}`

function add({ nodes }: Build, id: string, what: { planned: readonly string[]; uses: readonly string[] }): void {
  const node = nodes.get(id) ?? { planned: [], uses: new Set<string>() }
  node.planned.push(...what.planned)
  for (const use of what.uses) if (use !== id) node.uses.add(use)
  nodes.set(id, node)
}

function addEntity(build: Build, entity: Entity): string {
  const { naming, entities } = build
  const id = naming.key(entity.key)
  if (entities.has(entity)) return id
  entities.add(entity)
  const { typed, same, unit, symbol, says, row, point, dimension } = entity
  const planned = JSON.stringify([typed?.digits, typed?.unit.text, unit.text, symbol, says, row, point, dimension.key])
  add(build, id, { planned: [planned], uses: same ? [addEntity(build, same)] : [] })
  return id
}

/** The words, rows and module by which a block is planned, and all that is given to it. */
function addCalc(build: Build, block: PlannedCalc): void {
  const { naming, plan } = build
  const name = naming.key(plan.notebook.blocks[block.index]?.name.text ?? '')
  const planned = JSON.stringify([
    block.module.id,
    [...block.words],
    [...block.rows],
    block.given.map(({ name: input, value }) => (typeof value === 'string' ? `${input}: ${value}` : input)),
  ])
  const words = block.given.flatMap(({ word }) => (word ? [naming.key(word.key)] : []))
  add(build, restOf(name), { planned: [planned], uses: words })
  const values = block.given.flatMap(({ value }) => (typeof value === 'string' ? [] : [addEntity(build, value)]))
  add(build, givenNode(name), { planned: [], uses: [...values, restOf(name)] })
}

function addLine(build: Build, line: PlannedLine): void {
  const { naming } = build
  const id = naming.lineId(line)
  const gives = givesOf(line).map(entity => addEntity(build, entity))
  for (const given of gives) add(build, given, { planned: [], uses: [id] })
  const uses = usedBy(line).map(entity => addEntity(build, entity))
  const tables = pointsIn(line).map(points => naming.key(points.key))
  add(build, id, { planned: [`${build.every} ${lineplan(build, line)}`], uses: [...uses, ...tables] })
}

function givesOf(line: PlannedLine): readonly Entity[] {
  if (line.kind === 'formula' || line.kind === 'look') return [line.gives]
  return line.kind === 'solve' ? line.gives.map(({ entity }) => entity) : []
}

const pointsIn = (line: PlannedLine): readonly Points[] =>
  [...(operandsOf(line)?.values() ?? [])].flatMap(found => ('kind' in found && found.kind === 'points' ? [found] : []))

const pointsText = ({ typed, remark }: Points): string =>
  JSON.stringify([typed.map(({ x, y }) => [x.digits, x.unit.text, y.digits, y.unit.text]), remark])
