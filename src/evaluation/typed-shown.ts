import { typedDigits } from '../quantity/number-print.ts'
import type { Shown } from '../quantity/types.ts'
import type { Typed } from './plan-types.ts'

/** What an author typed, for print: every digit of it, `.5` as `0.5`, in the unit it was typed in. */
export const typedShown = ({ digits, unit }: Typed): Shown => ({ digits: typedDigits(digits), unit, exact: true })
