import { type Amount, bare, isPlain, ofOneKind, raised, revalued } from './amount.ts'
import { Unreadable } from './mark.ts'

type Reduction = (args: readonly Amount[]) => Amount

const plain =
  (of: (x: number) => number): Reduction =>
  ([x]) => {
    if (!x || !isPlain(x)) throw new Unreadable('a function of a number with units')
    return bare(of(x.value))
  }

const pick =
  (of: (...values: number[]) => number): Reduction =>
  args => {
    return { ...ofOneKind(args), value: of(...args.map(each => each.value)), units: args.some(each => each.units) }
  }

const kept =
  (of: (x: number) => number): Reduction =>
  ([x]) => {
    if (!x) throw new Unreadable('a function of nothing')
    return revalued(x, of(x.value))
  }

/** A value within a billionth of a whole number counts as that number. */
function snapped(x: number): number {
  const whole = Math.round(x)
  return Math.abs(x - whole) <= 1e-9 * Math.max(1, Math.abs(x)) ? whole : x
}

const halfAway = (x: number): number => Math.sign(x) * Math.floor(snapped(Math.abs(x) + 0.5))

const functions: Readonly<Record<string, Reduction>> = {
  sin: plain(Math.sin),
  cos: plain(Math.cos),
  tan: plain(Math.tan),
  asin: plain(Math.asin),
  acos: plain(Math.acos),
  atan: plain(Math.atan),
  exp: plain(Math.exp),
  log: plain(Math.log),
  log10: plain(Math.log10),
  floor: plain(x => Math.floor(snapped(x))),
  ceil: plain(x => Math.ceil(snapped(x))),
  round: plain(halfAway),
  abs: kept(Math.abs),
  min: pick(Math.min),
  max: pick(Math.max),
  sum: pick((...values) => values.reduce((a, b) => a + b, 0)),
  atan2: args => bare(pick((y, x) => Math.atan2(y ?? Number.NaN, x ?? Number.NaN))(args).value),
  sqrt: ([x]) => raised(x ?? bare(Number.NaN), bare(1 / 2)),
  cbrt: ([x]) => raised(x ?? bare(Number.NaN), bare(1 / 3)),
}

/** How functions are printed, to the name the pencil works them out by. */
const printed: Readonly<Record<string, string>> = {
  ln: 'log',
  lg: 'log10',
  arcsin: 'asin',
  arccos: 'acos',
  arctan: 'atan',
}

/** The function of a printed word; undefined where it is none. */
export function pencilFunction(word: string): string | undefined {
  const name = Object.hasOwn(printed, word) ? printed[word] : word
  return name !== undefined && Object.hasOwn(functions, name) ? name : undefined
}

/** A function worked out. Refuses arguments with units where the function wants numbers. */
export function reduced(name: string, args: readonly Amount[]): Amount {
  const reduction = Object.hasOwn(functions, name) ? functions[name] : undefined
  if (!reduction) throw new Unreadable(`\`${name}\` is not a function`)
  return reduction(args)
}
