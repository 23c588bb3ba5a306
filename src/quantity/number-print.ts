/** Space between thousands that neither stretches nor breaks. */
export const thinSpace = '\u202f'

interface Decimal {
  readonly negative: boolean
  /** Significant digits, the first not nought unless the value is nought. */
  readonly digits: string
  /** Power of ten of the first digit. */
  readonly exponent: number
}

const wholeLimit = 15

/** The value in decimal, freed of binary noise: to 15 digits where no more are asked for. */
function decimalOf(value: number, digits: number): Decimal {
  const [mantissa = '0', exponent = '0'] = Math.abs(value)
    .toExponential(Math.min(Math.max(digits, wholeLimit), 17) - 1)
    .split('e')
  return { negative: value < 0, digits: mantissa.replace('.', ''), exponent: Number(exponent) }
}

/** Half away from nought, on the decimal digits. */
function rounded({ negative, digits, exponent }: Decimal, figures: number): Decimal {
  if (digits.length <= figures) return { negative, digits: digits.padEnd(figures, '0'), exponent }
  const kept = BigInt(digits.slice(0, figures)) + (Number(digits[figures]) >= 5 ? 1n : 0n)
  const text = kept.toString()
  return text.length > figures
    ? { negative, digits: text.slice(0, figures), exponent: exponent + 1 }
    : { negative, digits: text.padStart(figures, '0'), exponent }
}

/**
 * The value to so many significant figures, half away from nought on its decimal digits, kept noughts included: `3.400`, `12500`,
 * `0.000460`. Outside 1e-4 to 1e7 as `1.234e-6`. Nought is `0`. Refuses (throws) a value that is not finite.
 */
export function digitsOf(value: number, figures: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`Not a number to print: ${value}`)
  if (value === 0) return '0'
  const decimal = rounded(decimalOf(value, figures), figures)
  const sign = decimal.negative ? '-' : ''
  return sign + (isLong(decimal) ? scientific(decimal) : positional(decimal))
}

const isLong = ({ exponent }: Decimal): boolean => exponent < -4 || exponent >= 7

function scientific({ digits, exponent }: Decimal): string {
  return `${withPoint(digits, 1)}e${exponent}`
}

function positional({ digits, exponent }: Decimal): string {
  if (exponent < 0) return `0.${'0'.repeat(-exponent - 1)}${digits}`
  return withPoint(digits.padEnd(exponent + 1, '0'), exponent + 1)
}

const withPoint = (digits: string, whole: number): string =>
  digits.length > whole ? `${digits.slice(0, whole)}.${digits.slice(whole)}` : digits

/**
 * The value of one unit in the last place shown. `12500` ends in the units unless `figures` says that only four of its digits count,
 * when it is 10.
 */
export function lastPlace(digits: string, figures = Number.POSITIVE_INFINITY): number {
  const [mantissa = '', exponent = '0'] = digits.replace(/^-/, '').split('e')
  const [whole = '', decimals = ''] = mantissa.split('.')
  const unread = decimals ? 0 : Math.max(0, whole.length - figures)
  return Number(`1e${Number(exponent) - decimals.length + unread}`)
}

/** How many significant figures the digits show; noughts at the end of a whole number count. */
export function figuresOf(digits: string): number {
  const mantissa = digits.replace(/^-/, '').split('e')[0] ?? ''
  return Math.max(1, mantissa.replace('.', '').replace(/^0+/, '').length)
}

/** A number as an author typed it, in the spelling of `digitsOf`, every digit kept: `.5` is `0.5`, `1E3` is `1e3`. */
export function typedDigits(typed: string): string {
  const [mantissa = '', exponent] = typed.replace('−', '-').replace('+', '').toLowerCase().split('e')
  const sign = mantissa.startsWith('-') ? '-' : ''
  const plain = mantissa
    .replace('-', '')
    .replace(/^0+(?=\d)/, '')
    .replace(/^(?=\.|$)/, '0')
    .replace(/\.$/, '')
  return sign + plain + (exponent === undefined ? '' : `e${Number(exponent)}`)
}

interface Pieces {
  readonly minus: boolean
  readonly whole: string
  readonly decimals: string
  readonly exponent: string | undefined
}

function pieces(digits: string): Pieces {
  const [mantissa = '', exponent] = digits.replace(/^-/, '').split('e')
  const [whole = '', decimals] = mantissa.split('.')
  return { minus: digits.startsWith('-'), whole, decimals: decimals === undefined ? '' : `.${decimals}`, exponent }
}

const grouped = (whole: string, gap: string): string =>
  whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, gap)

/** For running text: `−26.08`, `12 500` with a thin space, `1.2×10⁻⁶`. */
export function plainNumber(digits: string): string {
  const { minus, whole, decimals, exponent } = pieces(digits)
  const power = exponent === undefined ? '' : `×10${[...exponent].map(raisedCharacter).join('')}`
  return `${minus ? '−' : ''}${grouped(whole, thinSpace)}${decimals}${power}`
}

const raisedCharacter = (c: string): string => (c === '-' ? '⁻' : ('⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)] ?? ''))

/** For KaTeX: `-26.08`, `12\,500`, `{1.2 \times 10^{-6}}`; never broken at a line's end. */
export function texNumber(digits: string): string {
  const { minus, whole, decimals, exponent } = pieces(digits)
  const plain = `${minus ? '-' : ''}${grouped(whole, '\\,')}${decimals}`
  return exponent === undefined ? plain : `{${plain} \\times 10^{${exponent}}}`
}

/** In words: `minus 26.08`, `1.2 times 10 to the minus 6`. */
export function spokenNumber(digits: string): string {
  const { minus, whole, decimals, exponent } = pieces(digits)
  const power = exponent === undefined ? '' : ` times 10 to the ${exponent.replace('-', 'minus ')}`
  return `${minus ? 'minus ' : ''}${whole}${decimals}${power}`
}
