import type { Place } from './diagnostic.ts'

/** The place of a stretch inside a text that stands on one line: `span` counts UTF-16 units from the start of `place`. */
export function placeWithin(place: Place, span: { readonly start: number; readonly end: number }): Place {
  const { line, column, offset } = place
  return { line, column: column + span.start, offset: offset + span.start, end: offset + span.end }
}
