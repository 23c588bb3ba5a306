import type { Element, Nodes } from 'hast'

export type Test = (element: Element) => boolean

/** Every element that passes, in order, without looking inside one that does, nor into what is hidden from readers. */
export function all(node: Nodes, test: Test): Element[] {
  if (isHidden(node)) return []
  if (node.type === 'element' && test(node)) return [node]
  return 'children' in node ? node.children.flatMap(child => all(child, test)) : []
}

/** The first element that passes, outside what is hidden from readers. */
export function first(node: Nodes, test: Test): Element | undefined {
  if (isHidden(node)) return undefined
  if (node.type === 'element' && test(node)) return node
  if (!('children' in node)) return undefined
  for (const child of node.children) {
    const found = first(child, test)
    if (found) return found
  }
  return undefined
}

/** Glyphs that stand beside MathML, and drawn marks. */
function isHidden(node: Nodes): boolean {
  return node.type === 'element' && node.properties.ariaHidden === 'true'
}

export function classed(element: Element, name: string): boolean {
  const names = element.properties.className
  return Array.isArray(names) && names.includes(name)
}

export function attribute(element: Element, name: string): string | undefined {
  const value = element.properties[name]
  return value === undefined || value === null ? undefined : String(value)
}

/** All text in an element, in order. */
export function textOf(node: Nodes): string {
  if (node.type === 'text') return node.value
  return 'children' in node ? node.children.map(textOf).join('') : ''
}
