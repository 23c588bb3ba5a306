import { dimensionless, power, times } from './dimension.ts'
import { type Exact, exactOf, exactPower, exactTimes, nearest } from './exact.ts'
import { equal, negate, rationalText, unity } from './rational.ts'
import type { Dimension, Rational, Unit, UnitPart } from './types.ts'
import { unitMeant } from './unit-hints.ts'
import { type NamedPart, readParts } from './unit-parts.ts'
import { type ListedUnit, listedUnit } from './units.ts'

/** Why a unit text cannot be read, placed in it. `name` is there where no unit has that name. */
export interface UnitFault {
  readonly rule: 'unit-syntax' | 'unit-unknown'
  readonly says: string
  readonly help?: string
  readonly start: number
  readonly end: number
  readonly name?: string
}

export type ReadUnit = { readonly ok: true; readonly unit: Unit } | { readonly ok: false; readonly fault: UnitFault }

/** The empty unit: a plain number. */
export const one: Unit = { text: '', parts: [], factor: 1, dimension: dimensionless }

const read = new Map<string, Unit>([['', one]])

/**
 * Reads a unit expression of the closed list: `kN*m/m`, `kN/m^2`, `W/(m^2*K)`, `1/m`, `MPa^(1/2)`; blanks and typed characters
 * (`·`, `²`, `µm`, `°C`) are understood. Units of one canonical text are the same object. Temperature points stand alone.
 */
export function readUnit(text: string): ReadUnit {
  const read = readParts(text)
  if (!read.ok) return { ok: false, fault: { rule: 'unit-syntax', ...read.fault } }
  const fault = read.parts.map(part => partFault(part, read.parts.length)).find(each => each !== undefined)
  if (fault) return { ok: false, fault }
  const unit = unitFromParts(read.parts)
  return isCalculable(unit) ? { ok: true, unit } : { ok: false, fault: { ...beyondNumbers, end: text.length } }
}

const beyondNumbers = {
  rule: 'unit-syntax',
  says: 'The unit is too large or too small to calculate with',
  start: 0,
} as const

/** Whether the factor of a unit is a size that formulas can calculate with. */
export const isCalculable = ({ factor }: Unit): boolean => factor > 1e-150 && factor < 1e150

/** The unit of a text that is known to be sound, as in our own tables. Throws on any other. */
export function unitOf(text: string): Unit {
  const found = readUnit(text)
  if (found.ok) return found.unit
  throw new SyntaxError(`${text}: ${found.fault.says}`)
}

function partFault(part: NamedPart, of: number): UnitFault | undefined {
  const { name, start, end } = part
  const unit = listedUnit(name)
  if (!unit) return unknown(part)
  if (unit.offset === undefined || (of === 1 && equal(part.exponent, unity))) return undefined
  const difference = name === 'degC' ? 'K' : 'delta_degF'
  const says = `\`${name}\` is a temperature on a scale and stands only by itself`
  return { rule: 'unit-syntax', says, help: `Write \`${difference}\` for a temperature difference`, start, end }
}

function unknown({ name, start, end }: NamedPart): UnitFault {
  const meant = unitMeant(name)
  const help = meant && (meant.includes(',') ? `Write ${meant}` : `Write \`${meant}\``)
  return { rule: 'unit-unknown', says: `No unit is named \`${name}\``, ...(help && { help }), start, end, name }
}

/** The unit of these parts, in their order. Every name must be listed. */
export function unitFromParts(parts: readonly UnitPart[]): Unit {
  const kept = parts.filter(part => part.exponent.n !== 0).map(({ name, exponent }) => ({ name, exponent }))
  const text = unitExpression(kept)
  const known = read.get(text)
  if (known) return known
  const made = assemble(text, kept)
  read.set(text, made)
  return made
}

function assemble(text: string, parts: readonly UnitPart[]): Unit {
  let exact: Exact = exactOf('1')
  let dimension: Dimension = dimensionless
  for (const { name, exponent } of parts) {
    const unit = entry(name)
    exact = exactTimes(exact, exactPower(unit.exact, exponent))
    dimension = times(dimension, power(unit.dimension, exponent))
  }
  const offset = parts.length === 1 ? entry(parts[0]?.name ?? '').offset : undefined
  return { text, parts, factor: nearest(exact), dimension, ...(offset !== undefined && { offset }) }
}

function entry(name: string): ListedUnit {
  const unit = listedUnit(name)
  if (!unit) throw new RangeError(`No unit is named \`${name}\``)
  return unit
}

interface Style {
  readonly name: (unit: ListedUnit) => string
  readonly raised: (base: string, exponent: Rational) => string
  readonly dot: string
  /** Behind a number `m⁻¹`, since `0.25 1/m` could be taken for another number. */
  readonly isForPrint?: boolean
}

/** Canonical typed text: numerators in their order, then the denominators behind one `/`. */
function unitExpression(parts: readonly UnitPart[]): string {
  return expression(parts, { name: unit => unit.name, raised: (base, e) => `${base}^${typed(e)}`, dot: '*' })
}

const typed = (e: Rational): string => (e.d === 1 ? `${e.n}` : `(${rationalText(e)})`)

function expression(parts: readonly UnitPart[], style: Style): string {
  const above = parts.filter(part => part.exponent.n > 0)
  const below = parts.filter(part => part.exponent.n < 0)
  const top = above.map(part => printed(part.name, part.exponent, style)).join(style.dot)
  if (!below.length) return top
  if (!top && style.isForPrint) return below.map(part => printed(part.name, part.exponent, style)).join(style.dot)
  const bottom = below.map(part => printed(part.name, negate(part.exponent), style)).join(style.dot)
  return `${top || '1'}/${below.length > 1 ? `(${bottom})` : bottom}`
}

function printed(name: string, exponent: Rational, style: Style): string {
  const base = style.name(entry(name))
  return equal(exponent, unity) ? base : style.raised(base, exponent)
}

const superscript = (e: Rational): string =>
  e.d === 1 ? [...`${e.n}`].map(c => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)] ?? '⁻').join('') : `^(${rationalText(e)})`

/** Plain text for print: `kN·m/m`, `kN/m²`, `W/(m²·K)`, `m⁻¹`, `°C`. */
export function unitText(unit: Unit): string {
  return expression(unit.parts, {
    name: each => each.plain,
    raised: (base, e) => base + superscript(e),
    dot: '·',
    isForPrint: true,
  })
}

/** Upright TeX in braces, so that no line breaks inside it. The unit one gives an empty text. */
export function unitTex(unit: Unit): string {
  const dot = '\\,{\\cdot}\\,'
  const tex = expression(unit.parts, {
    name: each => each.tex,
    raised: (base, e) => `${base}^{${rationalText(e)}}`,
    dot,
    isForPrint: true,
  })
  return tex && `{${tex}}`
}

/** Whether the unit stands close to its number, as the degree of an angle does. */
export const standsClose = (unit: Unit): boolean =>
  unit.parts.length === 1 && entry(unit.parts[0]?.name ?? '').close === true

/** Spoken words: `kilonewton metres per metre`, `kilonewtons per square metre`. */
export function unitSpoken(unit: Unit): string {
  const above = unit.parts.filter(part => part.exponent.n > 0)
  const below = unit.parts.filter(part => part.exponent.n < 0)
  const top = above.map((part, i) => spoken(part.name, part.exponent, i === above.length - 1)).join(' ')
  const bottom = below.map(part => spoken(part.name, negate(part.exponent), false)).join(' ')
  return [top, bottom && `per ${bottom}`].filter(Boolean).join(' ')
}

function spoken(name: string, exponent: Rational, plural: boolean): string {
  const word = plural ? entry(name).plural : entry(name).singular
  if (equal(exponent, unity)) return word
  if (exponent.d === 1 && exponent.n === 2 && isLength(name)) return `square ${word}`
  if (exponent.d === 1 && exponent.n === 3 && isLength(name)) return `cubic ${word}`
  if (exponent.d === 1 && exponent.n === 2) return `${word} squared`
  return `${word} to the power ${rationalText(exponent)}`
}

const isLength = (name: string): boolean => entry(name).dimension === entry('m').dimension
