import type { Element } from 'hast'
import { h } from 'hastscript'

/** What runs over both columns of a calculation; not a head, which stays with what stands below it. */
const wide = ['given-list', 'comparisons', 'step across']

function isWide({ properties: { className } }: Element): boolean {
  const names: readonly unknown[] = Array.isArray(className) ? className : [className]
  return wide.some(each => each.split(' ').every(name => names.includes(name)))
}

/**
 * Elements with a seam behind each that runs over both columns: something without height, so that a sheet may end there. Where the step
 * behind does not fit any more, the browser that prints finds no other place for a break and takes the whole calculation overleaf.
 */
export const withSeams = (elements: readonly Element[]): Element[] =>
  elements.flatMap(element => (isWide(element) ? [element, h('div.seam')] : [element]))
