import { unitOf } from '../../src/quantity/unit.ts'
import { listedUnit, unitNames } from '../../src/quantity/units.ts'

/** Evaluates the TeX of a line with numbers, units included, in SI: an independent reader of what is printed. */
export function evaluateTex(tex: string): number {
  const reader = new TexReader(tex)
  const value = reader.sum()
  reader.end()
  return value
}

const unitFactor = new Map(
  unitNames
    .filter(name => listedUnit(name)!.offset === undefined)
    .map(name => [listedUnit(name)!.tex, unitOf(name).factor]),
)

class TexReader {
  private at = 0
  private readonly tex: string

  constructor(tex: string) {
    this.tex = tex
  }

  end(): void {
    this.blanks()
    if (this.at < this.tex.length) throw new Error(`Left over: ${this.tex.slice(this.at)}`)
  }

  private blanks(): void {
    this.at += /^(?:\s|\\,(?!\d)|\\;|\\allowbreak(?![a-z])|\\ )*/.exec(this.tex.slice(this.at))![0].length
  }

  private take(text: string): boolean {
    this.blanks()
    if (!this.tex.startsWith(text, this.at)) return false
    if (/^\\[a-z]+$/i.test(text) && /^[a-z]/i.test(this.tex.slice(this.at + text.length))) return false
    this.at += text.length
    return true
  }

  private need(text: string): void {
    if (!this.take(text)) throw new Error(`Expected ${text} at: ${this.tex.slice(this.at)}`)
  }

  sum(): number {
    let value = this.signed()
    for (;;) {
      if (this.take('+')) value += this.product()
      else if (this.take('-')) value -= this.product()
      else return value
    }
  }

  private signed(): number {
    return this.take('-') ? -this.product() : this.product()
  }

  private product(): number {
    let value = this.power()
    for (;;) {
      if (this.take('\\cdot') || this.take('\\times') || this.take('{\\cdot}')) value *= this.power()
      else if (this.take('\\mathbin{/}') || this.take('/')) value /= this.power()
      else return value
    }
  }

  private power(): number {
    const base = this.atom()
    return this.take('^') ? base ** this.group() : base
  }

  private group(): number {
    this.need('{')
    const value = this.sum()
    this.need('}')
    return value
  }

  private args(): number[] {
    const close = this.open()
    const values = [this.sum()]
    while (this.take(',')) values.push(this.sum())
    this.need(close)
    return values
  }

  private open(): string {
    if (this.take('\\left(')) return '\\right)'
    if (this.take('\\bigl(')) return '\\bigr)'
    this.need('(')
    return ')'
  }

  private atom(): number {
    this.blanks()
    const number = /^\d+(?:\\,\d{3})*(?:\.\d+)?/.exec(this.tex.slice(this.at))?.[0]
    if (number !== undefined) {
      this.at += number.length
      return Number(number.replaceAll('\\,', ''))
    }
    const unit = this.unit()
    if (unit !== undefined) return unit
    if (this.take('{')) return this.braced()
    if (this.take('\\frac')) return this.group() / this.group()
    if (this.take('\\sqrt[3]')) return Math.cbrt(this.group())
    if (this.take('\\sqrt')) return Math.sqrt(this.group())
    if (this.take('e^')) return Math.exp(this.group())
    if (this.take('\\pi')) return Math.PI
    return this.called()
  }

  /** A number with its unit: the unit behind the gap is a factor. */
  private braced(): number {
    let value = this.sum()
    while (!this.take('}')) value *= this.product()
    return value
  }

  private unit(): number | undefined {
    for (const [tex, factor] of unitFactor)
      if (this.tex.startsWith(tex, this.at)) {
        this.at += tex.length
        return factor
      }
    return undefined
  }

  private called(): number {
    for (const [name, apply] of functions) if (this.take(name)) return apply(...this.args())
    if (this.take('\\left|')) return Math.abs(this.until('\\right|'))
    if (this.take('\\bigl|')) return Math.abs(this.until('\\bigr|'))
    return this.args()[0]!
  }

  private until(close: string): number {
    const value = this.sum()
    this.need(close)
    return value
  }
}

const functions: readonly (readonly [string, (...args: number[]) => number])[] = [
  ['\\max', Math.max],
  ['\\min', Math.min],
  ['\\exp', Math.exp],
  ['\\ln', Math.log],
  ['\\arctan', Math.atan],
  ['\\sin', Math.sin],
]
