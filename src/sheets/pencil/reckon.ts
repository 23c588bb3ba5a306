import { type Amount, bare, product, quotient, raised, revalued, sum } from './amount.ts'
import { done, type Hand, hand, seen, signAhead, takes } from './hand.ts'
import { type Mark, marksText, Unreadable } from './mark.ts'
import { pencilFunction, reduced } from './pencil-functions.ts'
import { readFactor, readUnitBehind } from './read-unit.ts'

/** Works out a printed expression. Refuses (throws `Unreadable`) what it cannot read to the end. */
export function reckon(marks: readonly Mark[]): Amount {
  const at = hand(marks)
  const amount = readSum(at)
  if (!done(at)) throw new Unreadable(`\`${marksText(marks.slice(at.at))}\` is left over`)
  return amount
}

export function readSum(at: Hand): Amount {
  let total = readProduct(at)
  for (;;) {
    const sign = takes(at, '+', '−', '-')
    if (!sign) return total
    total = sum(total, readProduct(at), sign === '+' ? 1 : -1)
  }
}

function readProduct(at: Hand): Amount {
  let total = readSigned(at)
  for (;;) {
    const sign = takes(at, '×', '⋅', '·', '/')
    if (sign === '/') total = quotient(total, readSigned(at))
    else if (sign || beginsFactor(seen(at))) total = product(total, readSigned(at))
    else return total
  }
}

/** What may follow a factor without a sign between: a bracket, a fraction, a root, a function, a unit. */
function beginsFactor(mark: Mark | undefined): boolean {
  if (mark === undefined || mark.kind === 'raised' || mark.kind === 'lowered') return false
  if (mark.kind === 'word') return mark.text !== 'and' && mark.text !== 'or'
  return mark.kind !== 'sign' || ['(', '[', '⌊', '⌈'].includes(mark.text)
}

function readSigned(at: Hand): Amount {
  if (!takes(at, '−', '-')) return readPower(at)
  const below = readBelowNought(at)
  if (below) return below
  const amount = readSigned(at)
  return revalued(amount, -amount.value)
}

/** `12 °C` behind a minus: on a scale the sign is the number's own. Undefined, the finger unmoved, where no scale stands there. */
function readBelowNought(at: Hand): Amount | undefined {
  const mark = seen(at)
  if (mark?.kind !== 'number') return undefined
  const from = at.at
  at.at += 1
  const full = Number(mark.text) * powerOfTen(at)
  const behind = readUnitBehind(at)
  if (behind && behind.offset !== 0) return revalued(behind.unit, -full * behind.unit.value + behind.offset)
  at.at = from
  return undefined
}

function readPower(at: Hand): Amount {
  const base = readAtom(at)
  const mark = seen(at)
  if (mark?.kind !== 'raised') return base
  at.at += 1
  return raised(base, reckon(mark.of))
}

function readAtom(at: Hand): Amount {
  const mark = seen(at)
  if (mark === undefined) throw new Unreadable('the line breaks off')
  switch (mark.kind) {
    case 'number':
      at.at += 1
      return withUnit(Number(mark.text), at)
    case 'group':
      at.at += 1
      return reckon(mark.of)
    case 'fraction':
      at.at += 1
      return quotient(reckon(mark.above), reckon(mark.below))
    case 'root':
      at.at += 1
      return raised(reckon(mark.of), quotient(bare(1), mark.degree.length > 0 ? reckon(mark.degree) : bare(2)))
    case 'sign':
      return readBracket(at, mark.text)
    case 'word':
      return readWord(at, mark.text)
    default:
      throw new Unreadable(`\`${marksText([mark])}\` stands alone`)
  }
}

/** A number, times ten to a power where that is how it is printed, with the unit behind it. */
function withUnit(value: number, at: Hand): Amount {
  const full = value * powerOfTen(at)
  const behind = readUnitBehind(at)
  if (!behind) return bare(full)
  return revalued(behind.unit, full * behind.unit.value + behind.offset)
}

function powerOfTen(at: Hand): number {
  const [times, ten, power] = [seen(at), seen(at, 1), seen(at, 2)]
  if (times?.kind !== 'sign' || times.text !== '×') return 1
  if (ten?.kind !== 'number' || ten.text !== '10' || power?.kind !== 'raised') return 1
  at.at += 3
  return 10 ** reckon(power.of).value
}

function readWord(at: Hand, word: string): Amount {
  if (word === 'π') return passed(at, bare(Math.PI))
  const power = seen(at, 1)
  if (word === 'e' && power?.kind === 'raised') {
    at.at += 2
    return reduced('exp', [reckon(power.of)])
  }
  const name = pencilFunction(word)
  if (name) return readFunction(at, name)
  const unit = readFactor(at)
  if (unit) return unit
  throw new Unreadable(`\`${word}\` is not a number`)
}

function passed(at: Hand, amount: Amount): Amount {
  at.at += 1
  return amount
}

/** A function with its argument: `tan²(…)`, `sin⁻¹(…)`, `log₁₀(…)`, `min[…, …]`, `sin 30°`. */
function readFunction(at: Hand, name: string): Amount {
  at.at += 1
  const base = seen(at)
  const lowered = base?.kind === 'lowered' ? marksText(base.of) : undefined
  if (lowered !== undefined) at.at += 1
  const power = seen(at)
  const exponent = power?.kind === 'raised' ? reckon(power.of) : undefined
  if (exponent) at.at += 1
  const args = readArguments(at)
  const full = name === 'log' && lowered === '10' ? 'log10' : name
  if (exponent?.value === -1) return reduced(`a${full}`, args)
  const amount = reduced(full, args)
  return exponent ? raised(amount, exponent) : amount
}

function readArguments(at: Hand): Amount[] {
  const open = takes(at, '(', '[', '{')
  if (!open) return [readPower(at)]
  const args = [readSum(at)]
  while (takes(at, ',')) args.push(readSum(at))
  closing(at, closers[open] ?? ')')
  return args
}

const closers: Readonly<Record<string, string>> = {
  '(': ')',
  '[': ']',
  '{': '}',
  '⌊': '⌋',
  '⌈': '⌉',
  '∣': '∣',
  '|': '|',
}
const inside: Readonly<Record<string, string>> = { '⌊': 'floor', '⌈': 'ceil', '∣': 'abs', '|': 'abs' }

function readBracket(at: Hand, open: string): Amount {
  const close = closers[open]
  if (!close) throw new Unreadable(`\`${open}\` out of place`)
  at.at += 1
  const amount = readSum(at)
  closing(at, close)
  const name = inside[open]
  return name ? reduced(name, [amount]) : amount
}

function closing(at: Hand, close: string): void {
  if (!takes(at, close)) throw new Unreadable(`\`${close}\` is missing before \`${signAhead(at) ?? 'the end'}\``)
}
