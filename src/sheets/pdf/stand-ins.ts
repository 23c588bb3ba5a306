import { decodeName } from './pdf-pages.ts'

/**
 * Returns a part of a document with something of each name that its links look for in other parts, and a link to each of its own names: Chromium writes
 * a link only where it finds a place of that name, and names a place only where a link leads to it. All of it is hidden and never printed.
 */
export function withStandIns(part: string): string {
  const own = new Set([...part.matchAll(/\sid="([^"]*)"/g)].map(([, id = '']) => id))
  const wanted = new Set([...part.matchAll(/\shref="#([^"]*)"/g)].map(([, name = '']) => decodeName(name)))
  const places = [...wanted].filter(name => !own.has(name)).map(name => `<i id="${name}"></i>`)
  const links = [...own].map(id => `<a href="#${id}"></a>`)
  const end = part.lastIndexOf('</body>')
  if (end < 0) throw new RangeError('expected a document with a `body` element')
  return `${part.slice(0, end)}<div hidden>${places.join('')}${links.join('')}</div>${part.slice(end)}`
}
