import type { Shown } from '../quantity/types.ts'

/** A value as plain data: its digits as printed, with the unit as typed in a notebook; a word as itself. */
export const shownData = (shown: Shown | string) => (typeof shown === 'string' ? { word: shown } : numberData(shown))

/** The same of a number. */
export const numberData = ({ digits, unit }: Shown) => ({ shown: digits, unit: unit.text })
