import type { Place } from '../../src/diagnostic/diagnostic.ts'
import type { Notebook, Written } from '../../src/notebook/types.ts'

const isWritten = (value: object): value is Written => 'text' in value && 'place' in value && !('kind' in value)
const isPlace = (value: object): value is Place => 'line' in value && 'column' in value && 'offset' in value

function collect<Found>(value: unknown, is: (value: object) => value is Found & object): Found[] {
  if (typeof value !== 'object' || value === null) return []
  const below = Object.values(value).flatMap(each => collect(each, is))
  return is(value) ? [value, ...below] : below
}

/** Every stretch of the author's text in the blocks and mentions of a notebook. */
export const writtenOf = ({ blocks, mentions }: Notebook): readonly Written[] => collect([blocks, mentions], isWritten)

/** Every place in a notebook. */
export const placesOf = ({ blocks, mentions, notices, diagnostics }: Notebook): readonly Place[] =>
  collect([blocks, mentions, notices, diagnostics], isPlace)
