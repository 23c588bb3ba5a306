import { nearestNames } from '../diagnostic/nearest-name.ts'
import { unitMeant } from '../quantity/unit-hints.ts'
import { unitSpelling } from '../quantity/unit-parts.ts'
import { isUnitName, unitNames } from '../quantity/units.ts'
import { isFunctionName } from './functions.ts'

/** Why something may not be a name. */
export interface NameFault {
  readonly rule: 'name-is-unit' | 'formula-refused'
  readonly says: string
  readonly help?: string
}

const letter = '(?:[A-Za-zµ]|(?=\\p{L})\\p{Script=Greek})'
/** One name without its block: a letter, then letters, digits and `_`; Greek letters count. */
export const namePattern = `${letter}(?:${letter}|[0-9_])*`
const wholeName = new RegExp(`^${namePattern}$`, 'u')

/** Words that formulas refuse wherever they stand. */
export const strangeWords: ReadonlySet<string> = new Set([
  'true',
  'false',
  'null',
  'undefined',
  'NaN',
  'Infinity',
  'mod',
  'xor',
  'if',
  'else',
])

/** Why a word of the language may not be a name. */
const words: ReadonlyMap<string, string> = new Map([
  ['to', 'it chooses the unit of a result'],
  ['and', 'it joins conditions'],
  ['or', 'it joins conditions'],
  ['not', 'it turns a condition round'],
  ...['pi', 'π'].map(word => [word, 'it is the number 3.14159…'] as const),
  ...[...strangeWords].map(word => [word, 'it is kept free of meaning'] as const),
])

/** The micro sign counts as the Greek letter, so that one name has one spelling. */
export const nameSpelling = (typed: string): string => typed.replaceAll('µ', 'μ')

/** Why a declared name (local, input, output, step) may not be used, or undefined where it may. Takes a name without its block. */
export function nameFault(name: string): NameFault | undefined {
  if (!wholeName.test(nameSpelling(name))) return shapeFault(name)
  if (isUnitName(unitSpelling(name))) return unitFault(name)
  if (isFunctionName(name)) return taken(name, 'it is a function')
  const word = words.get(name)
  return word === undefined ? undefined : taken(name, word)
}

const taken = (name: string, why: string): NameFault => ({
  rule: 'formula-refused',
  says: `\`${name}\` cannot be a name: ${why}`,
  help: `Add an index, as in \`${name}_1\``,
})

function unitFault(name: string): NameFault {
  const help = `Add an index, as in \`${name}_1\` or \`${name}_u\``
  return { rule: 'name-is-unit', says: `\`${name}\` is the name of a unit and cannot be the name of a value`, help }
}

function shapeFault(name: string): NameFault {
  const says = `\`${name}\` cannot be a name`
  return {
    rule: 'formula-refused',
    says,
    help: 'A name is a letter, then letters, digits and `_`; Greek letters count',
  }
}

/** What unit a name that stands behind a number probably means, as a help sentence, or undefined. */
export function unitHelp(name: string): string | undefined {
  const meant = unitMeant(name)
  if (meant === undefined) return undefined
  return meant.includes(',') ? `Write ${meant}` : `Write \`${meant}\``
}

/** The help at a unit that no list has: what it says itself, or which unit is near. */
export const unknownUnitHelp = ({
  help,
  name,
}: {
  readonly help?: string
  readonly name?: string
}): string | undefined => help ?? (name === undefined ? undefined : nearUnitHelp(name))

/** The units that a name is a slip of the pen away from, as a help sentence, or undefined. Of one or two letters it could be too many. */
export function nearUnitHelp(name: string): string | undefined {
  if (name.length < 3) return undefined
  const near = nearestNames(
    name,
    unitNames.filter(unit => unit.length > 2),
  )
  if (near.length === 0 || near.length > 3) return undefined
  return `Did you mean ${near.map(unit => `\`${unit}\``).join(' or ')}?`
}
