import type { Entry, Written } from './types.ts'

/** The help at a key that is the rest of a value with a comma in it. */
export const afterComma =
  'A comma ends a value inside `{ }`: put a text that has one in single quotes, and write a number as in `2500` or `2.5`'

/** Whether the key has no colon, as the rest of a value that held a comma has none. */
export const isCutOff = (key: Written, value: Entry): boolean =>
  value.kind === 'scalar' && value.written.place.end === key.place.end && !key.text.includes(':')
