/** Names by which what works a formula out may know an operation; any other is done by its `apply`. */
export type OneName = 'negative' | 'sqrt' | 'cbrt' | 'abs' | 'square' | 'cube' | 'fourth' | 'inverse' | 'other'
export type TwoName = '+' | '-' | '*' | '/' | '^' | 'min' | 'max' | 'other'

/**
 * What a formula comes to: names are slots, units are gone, and what is known now is a number. The order is that of the formula: whatever
 * works it out must do the same operations on the same numbers, so that the last bit is the same.
 */
export type Operation =
  | { readonly kind: 'constant'; readonly value: number }
  | { readonly kind: 'slot'; readonly at: number }
  | { readonly kind: 'one'; readonly name: OneName; readonly apply: (x: number) => number; readonly of: Operation }
  | {
      readonly kind: 'two'
      readonly name: TwoName
      readonly apply: (a: number, b: number) => number
      readonly left: Operation
      readonly right: Operation
    }
  /** Added up from nought, one after the other. */
  | { readonly kind: 'total'; readonly of: readonly Operation[] }

export const constant = (value: number): Operation => ({ kind: 'constant', value })
export const slot = (at: number): Operation => ({ kind: 'slot', at })

export const isConstant = (of: Operation): of is Extract<Operation, { kind: 'constant' }> => of.kind === 'constant'

/** What is done to one number. */
export interface One {
  readonly name?: OneName
  readonly apply: (x: number) => number
}

/** An operation on one number, done now where the number is known. */
export function one(of: Operation, { name = 'other', apply }: One): Operation {
  return isConstant(of) ? constant(apply(of.value)) : { kind: 'one', name, apply, of }
}

interface Two {
  readonly name?: TwoName
  readonly apply: (a: number, b: number) => number
}

/** An operation on two numbers, done now where both are known. */
export function two(left: Operation, right: Operation, { name = 'other', apply }: Two): Operation {
  if (isConstant(left) && isConstant(right)) return constant(apply(left.value, right.value))
  return { kind: 'two', name, apply, left, right }
}
