import { sources } from '../modules/sources.ts'
import type { Notebook } from '../notebook/types.ts'
import { linesOf } from './block-lines.ts'
import type { BlockWorking, Reference, Workings } from './workings.ts'

type Cited = { readonly key: string; readonly id: string; readonly number: string; readonly offset: number }

const known: Readonly<Record<string, { readonly short: string; readonly entry: string }>> = sources

/** Keys that `:cite` may name: the modules' sources and the author's own list. */
export const citable = (notebook: Notebook): ReadonlySet<string> =>
  new Set([...Object.keys(known), ...notebook.title.references.keys()])

/** Sources in the order of their first citation, each with the places that cite it. */
export function gatherReferences(notebook: Notebook, blocks: readonly BlockWorking[]): Workings['references'] {
  const keys = citable(notebook)
  const cited = [...blocks.flatMap(citedIn), ...mentioned(notebook, keys)].sort((a, b) => a.offset - b.offset)
  const places = new Map<string, { id: string; number: string }[]>()
  for (const { key, id, number } of cited) {
    const at = places.get(key) ?? []
    if (!at.some(place => place.id === id)) at.push({ id, number })
    places.set(key, at)
  }
  return [...places].map(([key, at]) => {
    const entry = notebook.title.references.get(key)
    const source = entry === undefined ? known[key] : { short: key, entry }
    return { key, entry: source?.entry ?? key, short: source?.short ?? key, cited: at }
  })
}

function mentioned(notebook: Notebook, keys: ReadonlySet<string>): Cited[] {
  return notebook.mentions.flatMap((mention, index) =>
    mention.kind === 'cite' && keys.has(mention.name.text)
      ? [{ key: mention.name.text, id: `m-${index + 1}`, number: 'text', offset: mention.place.offset }]
      : [],
  )
}

function citedIn(block: BlockWorking): Cited[] {
  if (block.kind === 'assume') return []
  const at = { offset: block.place.offset }
  const limits =
    block.kind === 'calc'
      ? block.limits.flatMap(limit => cite(limit.reference, { id: block.id, number: block.number, ...at }))
      : []
  const defaults =
    block.kind === 'calc'
      ? block.given.flatMap(given => cite(given.reference, { id: block.id, number: block.number, ...at }))
      : []
  return linesOf(block)
    .flatMap(line => cite(line.reference, { id: line.id, number: line.number, ...at }))
    .concat(limits, defaults)
}

const cite = (reference: Reference | undefined, at: Omit<Cited, 'key'>): Cited[] =>
  reference ? [{ key: reference.key, ...at }] : []
