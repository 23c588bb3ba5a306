/** What the pencil's reader sees on the paper, in reading order. */
export type Mark =
  | { readonly kind: 'number'; readonly text: string }
  | { readonly kind: 'word'; readonly text: string }
  | { readonly kind: 'sign'; readonly text: string }
  | { readonly kind: 'raised'; readonly of: readonly Mark[] }
  | { readonly kind: 'lowered'; readonly of: readonly Mark[] }
  | { readonly kind: 'group'; readonly of: readonly Mark[] }
  | { readonly kind: 'fraction'; readonly above: readonly Mark[]; readonly below: readonly Mark[] }
  | { readonly kind: 'root'; readonly of: readonly Mark[]; readonly degree: readonly Mark[] }

/** A line that the reader cannot make sense of. */
export class Unreadable extends Error {}

/** The marks as a line of text, for a report. */
export function marksText(marks: readonly Mark[]): string {
  return marks.map(markText).join(' ').replaceAll('( ', '(').replaceAll(' )', ')').replaceAll(' ^', '^')
}

function markText(mark: Mark): string {
  switch (mark.kind) {
    case 'number':
    case 'word':
    case 'sign':
      return mark.text
    case 'raised':
      return `^(${marksText(mark.of)})`
    case 'lowered':
      return `_(${marksText(mark.of)})`
    case 'group':
      return `(${marksText(mark.of)})`
    case 'fraction':
      return `(${marksText(mark.above)})/(${marksText(mark.below)})`
    case 'root':
      return `√(${marksText(mark.of)})`
  }
}
