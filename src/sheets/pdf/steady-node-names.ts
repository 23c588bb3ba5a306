import { rawObject, type SkiaPdf, valueStart } from './skia-pdf.ts'

/** A name Chromium gives to a structure element (a table head), where it stands as an identifier and not as text. */
const NODE_NAME = /(?<=\/ID |\[|R |\) )\(node(\d{8})\)/g

/** The tree of these names: its limits, and each name with its element. */
const NAME_TREE = /\/Limits \[\(node\d{8}\) \(node\d{8}\)\]\s*\/Names \[([^\]]*)\]/

/**
 * Returns the PDF with the names of its structure elements numbered from 1 in the order of the elements, at equal length, and their tree sorted anew.
 * Chromium takes the numbers from a counter that runs on with every node and every print of a tab, in an order that is not always the same.
 */
export function steadyNodeNames(pdf: Uint8Array, skia: SkiaPdf): Uint8Array {
  const objects = skia.offsets.flatMap((offset, number) =>
    offset > 0 ? [{ raw: rawObject(skia, number), start: valueStart(skia, number) }] : [],
  )
  const trees = objects.filter(({ raw }) => NAME_TREE.test(raw))
  const found = objects.filter(object => !trees.includes(object)).flatMap(({ raw, start }) => namesIn(raw, start))
  const order = [...new Set(found.map(name => name.node))]
  const rank = new Map(order.map((node, index) => [node, String(index + 1).padStart(8, '0')]))
  const copy = Buffer.from(pdf)
  for (const name of found) copy.write(rank.get(name.node) ?? name.node, name.at, 'latin1')
  for (const { raw, start } of trees) copy.write(sortedTree(raw, rank), start, 'latin1')
  return new Uint8Array(copy)
}

function namesIn(raw: string, start: number): { node: string; at: number }[] {
  return [...raw.matchAll(NODE_NAME)].map(found => ({ node: found[1] ?? '', at: start + found.index + '(node'.length }))
}

/** The tree with its new names in their order: the same entries, so the same length. */
function sortedTree(raw: string, rank: ReadonlyMap<string, string>): string {
  return raw.replace(NAME_TREE, (whole, entries: string) => {
    const renamed = entries.replaceAll(/node(\d{8})/g, (_, node: string) => `node${rank.get(node) ?? node}`)
    const sorted = (renamed.match(/\(node\d{8}\) \d+ \d+ R/g) ?? []).sort()
    const text = sorted.join(' ')
    if (text.length !== entries.length) return whole
    const [first = '', last = ''] = [sorted[0]?.slice(0, 14), sorted.at(-1)?.slice(0, 14)]
    return whole.replace(entries, text).replace(/\[\(node\d{8}\) \(node\d{8}\)\]/, `[${first} ${last}]`)
  })
}
