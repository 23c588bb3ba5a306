import type { Place } from '../diagnostic/diagnostic.ts'
import type { Rule } from '../diagnostic/rules.ts'
import { error, type Reading } from './reading.ts'
import type { Entry, Keyed, Written } from './types.ts'

/** How to refuse an entry of the wrong kind: under which rule, and what the key is called. */
export interface Expected {
  readonly rule: Rule
  readonly key: string
  readonly reading: Reading
}

const kinds = { scalar: 'one value', list: 'a list', map: 'a map of keys' } as const
const examples = { scalar: 'one value', list: '`[a, b]`', map: '`key: value` lines, indented under it' } as const

/** Returns the text of a scalar; refuses a list or a map. */
export function scalarOf(entry: Entry, expected: Expected): Written | undefined {
  return entry.kind === 'scalar' ? entry.written : refuseKind(entry, 'scalar', expected)
}

/** Returns the items of a list; refuses anything else. */
export function itemsOf(entry: Entry, expected: Expected): readonly Entry[] | undefined {
  return entry.kind === 'list' ? entry.items : refuseKind(entry, 'list', expected)
}

/** Returns the keys of a map; refuses anything else. */
export function entriesOf(entry: Entry, expected: Expected): readonly Keyed[] | undefined {
  return entry.kind === 'map' ? entry.entries : refuseKind(entry, 'map', expected)
}

function refuseKind(entry: Entry, wanted: Entry['kind'], { rule, key, reading }: Expected): undefined {
  const says = `Expected ${kinds[wanted]} for \`${key}\`, got ${isEmpty(entry) ? 'nothing' : kinds[entry.kind]}`
  error(reading, rule, { place: entryPlace(entry), says, help: `Give ${examples[wanted]}` })
}

const isEmpty = (entry: Entry): boolean => entry.kind === 'scalar' && entry.written.text === ''

/** Returns where an entry begins. */
export const entryPlace = (entry: Entry): Place => (entry.kind === 'scalar' ? entry.written.place : entry.place)
