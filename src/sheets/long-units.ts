import type { Element } from 'hast'
import { h } from 'hastscript'
import type { Shown } from '../quantity/types.ts'
import { unitPart, valueCells } from '../typesetting/value-html.ts'

/** A value as two cells of a narrow column: a unit too long for it breaks behind a stroke or a dot. */
export function narrowValueCells(shown: Shown | string): Element[] {
  const cells = valueCells(shown)
  const [number] = cells
  if (typeof shown === 'string' || cells.length < 2 || !number) return cells
  const pieces = unitPart(shown)
    .trimStart()
    .split(/(?<=[/·])/u)
  if (pieces.length < 2) return cells
  const broken = pieces.flatMap((piece, index) => (index > 0 ? [h('wbr'), piece] : [piece]))
  return [number, h('td.unit', broken)]
}
