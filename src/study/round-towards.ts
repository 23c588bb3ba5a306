import { digitsOf, lastPlace } from '../quantity/number-print.ts'

const figures = 4

/**
 * A limit of a value in the digits of the value's own four figures, rounded towards the value: what is printed has not passed the limit.
 * A limit that is a shorter number, `0.9`, is printed as that.
 * Both are numbers in the unit shown.
 */
export function roundTowards(limit: number, value: number): string {
  const place = lastPlace(digitsOf(value === 0 ? limit : value, figures), figures)
  const decimals = Math.max(0, -Math.floor(Math.log10(place) + 0.5))
  if (limit === 0 || decimals > 12) return digitsOf(limit, figures)
  const count = limit / place
  const whole = Math.round(count)
  // A limit found to 1e-12 may stand a hair off the number it is.
  const near = Math.abs(count - whole) < 1e-5
  const kept = (near ? whole : limit < value ? Math.ceil(count) : Math.floor(count)) * place
  if (kept === 0) return '0'
  const digits = Math.abs(kept) < 1e-4 ? scientific(kept, decimals) : kept.toFixed(decimals)
  if (digits.includes('e')) return digits
  // Noughts at the end would only say that it was rounded.
  return near && decimals > 0 ? digits.replace(/\.?0+$/, '') : digits
}

/** The same digits as a power of ten, as small numbers are printed everywhere; noughts at the end left away. */
function scientific(kept: number, decimals: number): string {
  const exponent = Math.floor(Math.log10(Math.abs(kept)))
  const [mantissa = '', power = ''] = kept.toExponential(Math.max(0, Math.min(decimals + exponent, 20))).split('e')
  return `${mantissa.replace(/(\.\d*?)0+$/, '$1').replace(/\.$/, '')}e${Number(power)}`
}
