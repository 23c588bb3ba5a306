import { UnreadablePdf } from './print-failure.ts'

/** How far the numbers in the objects of one part move when it is joined to others. */
export interface Move {
  /** Added to every object number. */
  readonly by: number
  /** Pages before the part: added to the keys by which the structure finds a page. */
  readonly pages: number
  /** The same for links. */
  readonly links: number
  /** Place of the part, from 0: makes the names of its structure elements and of its fonts differ from those of the others. */
  readonly part: number
}

/** Literal strings, which are left alone, and after them all that moves. */
const MOVING = /\((?:[^()\\]|\\[\s\S])*\)|\b(\d+) 0 R\b|\/(StructParents?) (\d+)|\/(BaseFont|FontName) \/([A-Z]{5})A\+/g

/** Keys of links start here, those of pages at 0. */
export const FIRST_LINK = 100_000

/** Returns the text of an object, without the bytes of its stream, as it reads among the others. Throws `UnreadablePdf` where it cannot be told from them. */
export function movedObject(text: string, { by, pages, links, part }: Move): string {
  return text.replace(
    MOVING,
    (whole, object?: string, key?: string, of?: string, font?: string, mark?: string): string => {
      if (object !== undefined) return `${Number(object) + by} 0 R`
      if (key === 'StructParents') return `/${key} ${Number(of) + pages}`
      if (key !== undefined) return `/${key} ${Number(of) + links}`
      if (font !== undefined) return `/${font} /${mark}${letter(part)}+`
      return whole.startsWith('(node') ? movedName(whole, part) : whole
    },
  )
}

/** A font that two parts draw with is in the file twice, each time with other glyphs: the mark of a subset must tell them apart. */
function letter(part: number): string {
  if (part >= 26) throw new UnreadablePdf('there are more than 26 parts')
  return String.fromCharCode('A'.charCodeAt(0) + part)
}

/** The names that Chromium gives to elements count from 1 in every part. Any other string stays as it is. */
function movedName(name: string, part: number): string {
  const [, first, others] = /^\(node(\d)(\d{7})\)$/.exec(name) ?? []
  if (others === undefined) return name
  if (first !== '0' || part > 9)
    throw new UnreadablePdf('the names of the elements leave no room for those of other parts')
  return `(node${part}${others})`
}
