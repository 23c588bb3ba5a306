/** The parts of a package to be printed as one document, with the head of the first. */
export function wholePrint(parts: readonly string[]): string {
  const [open, close] = ['<main>', '</main>']
  const inside = parts.map(part => part.slice(part.indexOf(open) + open.length, part.lastIndexOf(close)))
  const [first = ''] = parts
  return `${first.slice(0, first.indexOf(open) + open.length)}${inside.join('')}${first.slice(first.lastIndexOf(close))}`
}
