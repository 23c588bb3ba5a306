import { createHash } from 'node:crypto'
import type { Line } from '../evaluation/workings.ts'
import { earlierText } from './earlier-text.ts'
import { stepText } from './step-text.ts'
import { type StepPrint, type Vouched, vouched } from './vouched.ts'

/** A step as printed now: as a new tick vouches for it, and as one of an earlier version did. */
export interface StepPrints {
  readonly now: StepPrint
  readonly earlier: StepPrint
}

export const stepPrints = (line: Line): StepPrints => ({
  now: printOf(stepText(line)),
  earlier: printOf(earlierText(line)),
})

/** The result of a step as printed. */
export const stepResult = (line: Line): string => stepText(line).result

/** What is printed otherwise than it was when it was ticked. */
export function changedSince(of: StepPrint, { now, earlier }: StepPrints): readonly Vouched[] {
  const is = of.words === undefined ? earlier : now
  return vouched.filter(part => of[part] !== is[part])
}

const printOf = (text: Readonly<Partial<Record<Vouched, string>>>): StepPrint =>
  Object.fromEntries(Object.entries(text).map(([part, own]) => [part, digest(own)])) as unknown as StepPrint

const digest = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 8)
