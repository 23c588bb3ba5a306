import { type Amount, bare, product, quotient, raised } from './amount.ts'
import { done, type Hand, hand, seen, signAhead, takes } from './hand.ts'
import { type Mark, Unreadable } from './mark.ts'
import { pencilUnit, scales } from './pencil-units.ts'

/** A unit as it stands behind a number; a scale of temperature also shifts it. */
export interface Behind {
  readonly unit: Amount
  readonly offset: number
}

/**
 * Reads the unit behind a number, `kN·m/m`, `W/(m²·K)`, `°`, `°C`, and leaves the finger past it; undefined where none stands.
 * A dot or a slash belongs to the unit only where a unit follows it.
 */
export function readUnitBehind(at: Hand): Behind | undefined {
  const scale = scaleAhead(at)
  if (scale) return scale
  const first = readFactor(at)
  if (!first) return undefined
  let unit = first
  for (;;) {
    const before = at.at
    const sign = takes(at, '⋅', '·', '/')
    const next = sign && (readFactor(at) ?? (sign === '/' ? bracketed(at) : undefined))
    if (!next) {
      at.at = before
      return { unit, offset: 0 }
    }
    unit = sign === '/' ? quotient(unit, next) : product(unit, next)
  }
}

/** A bare unit, where a number might stand: `MPa` in a quotient. */
export function readFactor(at: Hand): Amount | undefined {
  const mark = seen(at)
  if (isRing(mark) && !isLetterAfterRing(at)) {
    at.at += 1
    return ring()
  }
  if (isFunctionAhead(at)) return undefined
  const unit = mark?.kind === 'word' ? (difference(at, mark.text) ?? pencilUnit(mark.text)) : undefined
  if (!unit) return undefined
  at.at += 1
  const power = seen(at)
  if (power?.kind !== 'raised' || isRing(power)) return unit
  at.at += 1
  return raised(unit, exponent(power.of))
}

/** `min` before a bracket is the least of several, not a minute. */
function isFunctionAhead(at: Hand): boolean {
  const mark = seen(at)
  return mark?.kind === 'word' && mark.text === 'min' && ['(', '[', '{'].includes(signAhead(at, 1) ?? '')
}

/** `Δ°C`: a difference of temperature. */
function difference(at: Hand, text: string): Amount | undefined {
  const letter = seen(at, 2)
  if (text !== 'Δ' || !isRing(seen(at, 1)) || letter?.kind !== 'word') return undefined
  at.at += 2
  return pencilUnit(`Δ∘${letter.text}`)
}

function scaleAhead(at: Hand): Behind | undefined {
  const letter = seen(at, 1)
  const scale = isRing(seen(at)) && letter?.kind === 'word' ? scales.get(letter.text) : undefined
  if (!scale) return undefined
  at.at += 2
  const kelvin = pencilUnit('K')
  if (!kelvin) throw new Unreadable('kelvin')
  return { unit: { ...kelvin, value: scale.factor }, offset: scale.offset }
}

function isLetterAfterRing(at: Hand): boolean {
  const letter = seen(at, 1)
  return letter?.kind === 'word' && scales.has(letter.text)
}

function isRing(mark: Mark | undefined): boolean {
  const inside = mark?.kind === 'raised' && mark.of.length === 1 ? mark.of[0] : undefined
  return inside?.kind === 'sign' && (inside.text === '∘' || inside.text === '°')
}

function ring(): Amount {
  return pencilUnit('∘') ?? bare(Math.PI / 180)
}

function bracketed(at: Hand): Amount | undefined {
  if (signAhead(at) !== '(') return undefined
  const before = at.at
  at.at += 1
  const inside = readUnitBehind(at)
  if (inside && takes(at, ')')) return inside.unit
  at.at = before
  return undefined
}

/** A whole or broken exponent: `2`, `−1`, `1/2`. */
function exponent(marks: readonly Mark[]): Amount {
  const at = hand(marks)
  const minus = takes(at, '−', '-') ? -1 : 1
  const above = number(at)
  const below = takes(at, '/') ? number(at) : 1
  if (!done(at)) throw new Unreadable('the exponent of a unit')
  return bare((minus * above) / below)
}

function number(at: Hand): number {
  const mark = seen(at)
  if (mark?.kind !== 'number') throw new Unreadable('the exponent of a unit')
  at.at += 1
  return Number(mark.text)
}
