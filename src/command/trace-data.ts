import type { Place } from '../diagnostic/diagnostic.ts'
import type { TraceGraph, TraceNode } from '../evaluation/trace-types.ts'
import type { Way } from '../evaluation/trace-walk.ts'
import { dimensionName } from '../quantity/dimension-names.ts'
import type { Evaluated } from './evaluated.ts'

/** One direction of a trace, and what is to be shown of it. */
export interface TracePart {
  readonly way: Way
  readonly ids: ReadonlySet<string>
}

/** What was traced. */
export interface Traced {
  readonly graph: TraceGraph
  readonly root: string
  readonly to?: string
  readonly parts: readonly TracePart[]
}

/** A trace as plain data, format 1: each place once, with the ids of what it rests on and of what uses it. */
export function traceData({ notebook, results }: Evaluated, { graph, root, to, parts }: Traced, version: string) {
  const shown = new Set([root, ...parts.flatMap(({ ids }) => [...ids])])
  const nodes = [...graph.values()].filter(({ id }) => shown.has(id))
  return {
    format: 1,
    tool: `undercroft ${version}`,
    notebook: { path: notebook.path, title: notebook.title.title },
    root,
    ...(to === undefined ? {} : { to }),
    nodes: nodes.map(node => nodeData(node, { slots: results.slots, shown })),
  }
}

interface About {
  readonly slots: Float64Array
  readonly shown: ReadonlySet<string>
}

function nodeData(node: TraceNode, { slots, shown }: About) {
  const { id, kind, name, number, symbol, says, formula, reference, note, place } = node
  return {
    id,
    kind,
    ...(name ? { name } : {}),
    ...(number ? { number } : {}),
    ...(symbol ? { symbol } : {}),
    ...valueData(node, slots),
    says,
    ...(formula === undefined ? {} : { formula }),
    ...(reference ? { source: reference } : {}),
    ...(note ? { note } : {}),
    ...(place ? { place: placeData(place) } : {}),
    restsOn: node.restsOn.filter(each => shown.has(each)),
    usedBy: node.usedBy.filter(each => shown.has(each)),
  }
}

function valueData({ value, entity }: TraceNode, slots: Float64Array) {
  if (value === undefined) return {}
  if (typeof value === 'string') return { word: value }
  const si = entity ? slots[entity.slot] : undefined
  const number = entity && si !== undefined ? { si, dimension: dimensionName(entity.dimension) } : {}
  return { ...number, shown: value.digits, unit: value.unit.text }
}

const placeData = ({ line, column }: Place) => ({ line, column })
