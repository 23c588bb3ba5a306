import { digitsOf } from '../quantity/number-print.ts'
import { inUnit } from '../quantity/to-unit.ts'
import type { Entity } from './plan-types.ts'
import { shownWords } from './shown-words.ts'
import { typedShown } from './typed-shown.ts'

/** A value in words of a message: as typed where the author typed it, otherwise to four figures in its own unit. */
export const shownText = ({ typed, unit }: Entity, si: number): string =>
  shownWords(typed ? typedShown(typed) : { digits: digitsOf(inUnit(si, unit), 4), unit })
