import { rawObject, type SkiaPdf, valueStart } from './skia-pdf.ts'

/** A name Chromium gives to a structure element (a table head), where it stands as an identifier and not as text. */
const NODE_NAME = /(?<=\/ID |\[|R |\) )\(node(\d{8})\)/g

/**
 * Returns the PDF with the names of its structure elements numbered from 1 in their own order, at equal length. Chromium takes the numbers from a counter
 * that runs on with every node and every print of a tab, so that without this a guessed page number would change bytes elsewhere.
 */
export function steadyNodeNames(pdf: Uint8Array, skia: SkiaPdf): Uint8Array {
  const found = skia.offsets.flatMap((offset, number) =>
    offset > 0 ? namesIn(rawObject(skia, number), valueStart(skia, number)) : [],
  )
  const order = [...new Set(found.map(name => name.node))].sort()
  const rank = new Map(order.map((node, index) => [node, String(index + 1).padStart(8, '0')]))
  const copy = Buffer.from(pdf)
  for (const name of found) copy.write(rank.get(name.node) ?? name.node, name.at, 'latin1')
  return new Uint8Array(copy)
}

function namesIn(raw: string, start: number): { node: string; at: number }[] {
  return [...raw.matchAll(NODE_NAME)].map(found => ({ node: found[1] ?? '', at: start + found.index + '(node'.length }))
}
