import { greekTex, greekWord } from './greek.ts'

/** One part of a symbol: a Greek letter, a single letter, digits, or a word. */
export interface SymbolPart {
  readonly tex: string
  readonly spoken: string
  readonly width: number
}

/** A symbol read apart: what stands on the line, its primes, what stands below. */
export interface SymbolReading {
  readonly head: SymbolPart
  /** True for `\Delta p`, which needs brackets under a power. */
  readonly compound: boolean
  readonly primes: number
  readonly below: readonly SymbolPart[]
}

/**
 * Reads a symbol as it is written for print (`K_0`, `gamma'`, `f_ck`, `M_support`, `\gamma'`, `f_{ck}`) or a name that has no symbol
 * of its own (`roof.M_support`, `water_depth`). Greek words become letters, one letter is italic, digits and words upright; a name of
 * whole words stays words. `~` joins the words of one index: `w_u_~roof~load`. Characters that cannot be set are left away.
 */
export function readSymbol(text: string): SymbolReading {
  const bare = text
    .slice(text.lastIndexOf('.') + 1)
    .replace(/[\\{}]/g, '')
    .replaceAll('µ', 'μ')
    .replaceAll('′', "'")
  const primes = bare.split("'").length - 1
  const [first = '', ...rest] = bare
    .replaceAll("'", '')
    .split(/[_,\s]+/)
    .filter(part => part !== '')
  const [head, index] = splitIndex(first)
  const below = [...(index ? [index] : []), ...rest]
  if (isWord(head)) return worded(head, { below, primes })
  const [operand, ...others] = below
  const partOfOperand = head === 'Delta' || head === 'Δ' ? operand && letterPart(operand) : undefined
  if (!partOfOperand) return { head: part(head), compound: false, primes, below: below.map(part) }
  return { head: joined([part(head), partOfOperand]), compound: true, primes, below: others.map(part) }
}

/** `K0` is K with index 0; `alpha1` likewise. */
function splitIndex(text: string): readonly [string, string | undefined] {
  const found = /^(\D+)(\d+)$/u.exec(text)
  const head = found?.[1]
  return head && (head.length === 1 || greekWord(head)) ? [head, found[2]] : [text, undefined]
}

const isWord = (text: string): boolean => /^[a-z]{3,}$/.test(text) && !greekWord(text)

/** Words stand on the line as words, up to the first part that is an index: a letter, digits, a Greek letter. */
function worded(head: string, { below, primes }: { below: readonly string[]; primes: number }): SymbolReading {
  const stop = below.findIndex(each => !/^[a-z]{2,}$/.test(each) || greekWord(each) !== undefined)
  const words = [head, ...(stop < 0 ? below : below.slice(0, stop))]
  const spoken = words.join(' ')
  const tex = `\\mathrm{${words.join('\\ ')}}`
  return {
    head: { tex, spoken, width: spoken.length },
    compound: false,
    primes,
    below: stop < 0 ? [] : below.slice(stop).map(part),
  }
}

function letterPart(text: string): SymbolPart | undefined {
  return /^[A-Za-z]$/.test(text) || greekWord(text) ? part(text) : undefined
}

function part(text: string): SymbolPart {
  const greek = greekWord(text)
  if (greek) return { tex: greekTex(greek) ?? greek, spoken: greek, width: 1 }
  if (text.includes('~')) return wordsPart(text.split('~').filter(word => word !== ''))
  const safe = text.replace(/[^A-Za-z0-9+*/.-]/g, '')
  if (safe === '') return { tex: '?', spoken: 'unnamed', width: 1 }
  const plain = /^(?:[A-Za-z]?\d*)$/.test(safe)
  return { tex: plain ? safe : `\\mathrm{${safe}}`, spoken: safe, width: safe.length }
}

/** Words of one index, upright with blanks between them. */
function wordsPart(words: readonly string[]): SymbolPart {
  const spoken = words.map(word => part(word).spoken).join(' ')
  return { tex: `\\mathrm{${spoken.replaceAll(' ', '\\ ')}}`, spoken, width: spoken.length }
}

/** The index that names a block: its name in words. */
export const blockIndex = (block: string): string => `~${block.replaceAll('_', '~')}`

const joined = (parts: readonly SymbolPart[]): SymbolPart => ({
  tex: parts.map(each => each.tex).join(' '),
  spoken: parts.map(each => each.spoken).join(' '),
  width: parts.reduce((so, each) => so + each.width, 0),
})

/** Whether a text is a symbol rather than a word: one letter or a Greek one, digits, indices, primes (`f_ck`, `gamma_1'`, `x_u,max`). */
export function isSymbolic(text: string): boolean {
  const head = /^(\p{L}+)\d*(?:[_,]\w+)*'*$/u.exec(text)?.[1]
  return head !== undefined && (head.length === 1 || greekWord(head) !== undefined)
}

/** An index added below, as the running index of a sum. */
export const withIndex = (reading: SymbolReading, index: string): SymbolReading => ({
  ...reading,
  below: [...reading.below, part(index)],
})

/** TeX of a symbol that has been read. */
export function readingTex({ head, below, primes }: SymbolReading): string {
  const index = below.length ? `_{${below.map(each => each.tex).join(',')}}` : ''
  return `${head.tex}${index}${"'".repeat(primes)}`
}

/** TeX of a symbol or name: `K_{0}`, `\gamma'`, `f_{\mathrm{ck}}`, `\mathrm{water\ depth}`. */
export const symbolTex = (symbol: string): string => readingTex(readSymbol(symbol))

/** A symbol or name in words: `K 0`, `gamma prime`, `f ck`. */
export function symbolSpoken(symbol: string): string {
  const { head, below, primes } = readSymbol(symbol)
  const names = ['', 'prime', 'double prime', 'triple prime']
  return [head.spoken, names[Math.min(primes, 3)], ...below.map(each => each.spoken)].filter(Boolean).join(' ')
}
