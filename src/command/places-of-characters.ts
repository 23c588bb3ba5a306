import { printable } from '../diagnostic/printable.ts'

/** A text that goes into a package, and the name of its file. */
export interface Source {
  readonly path: string
  readonly text: string
}

/** So many lines are told. */
const most = 10

/** Where characters stand, `a.checked.yaml:5  \`李\` \`伟\``, a line each; characters that a text only spells otherwise count as well. */
export function placesOfCharacters(characters: string, sources: readonly Source[]): readonly string[] {
  const wanted = new Set(characters)
  const places = sources.flatMap(({ path, text }) =>
    text.split('\n').flatMap((line, index) => {
      const found = [...new Set(line)].filter(each => [each, ...each.normalize('NFKC')].some(form => wanted.has(form)))
      const quoted = found.map(each => `\`${printable(each)}\``).join(' ')
      return found.length === 0 ? [] : [`${path}:${index + 1}  ${quoted}`]
    }),
  )
  const more = places.length - most
  return more > 0 ? [...places.slice(0, most), `and ${more} more ${more === 1 ? 'line' : 'lines'}`] : places
}
