/** Why a numerical method would not answer: `input` names the argument at fault, the message says what was expected. */
export class NumericRefusal extends Error {
  readonly input: string

  constructor(input: string, message: string) {
    super(message)
    this.name = 'NumericRefusal'
    this.input = input
  }
}

/** Returns `value` when it is a finite number; refuses NaN and the infinities, naming `input`. */
export function finite(value: number, input: string): number {
  if (!Number.isFinite(value))
    throw new NumericRefusal(input, `Expected a finite number for \`${input}\`, got ${value}`)
  return value
}

/** Returns `value` when it is a whole number from `least` to `most`; refuses anything else, naming `input`. */
export function whole(value: number, input: string, range: { readonly least: number; readonly most: number }): number {
  if (Number.isInteger(value) && value >= range.least && value <= range.most) return value
  const expected = `Expected a whole number from ${range.least} to ${range.most} for \`${input}\``
  throw new NumericRefusal(input, `${expected}, got ${value}`)
}

/** Returns entry `index` of `list`; an index outside the list is a fault of ours, not of the caller's numbers. */
export function entry(list: ArrayLike<number>, index: number): number {
  const value = list[index]
  if (value === undefined) throw new RangeError(`Index ${index} lies outside a list of ${list.length}`)
  return value
}
