import { createHash } from 'node:crypto'
import type { Line } from '../evaluation/workings.ts'
import { stepText } from './step-text.ts'
import { type StepPrint, type Vouched, vouched } from './vouched.ts'

/** A step as printed now, as a new tick vouches for it. */
export function stepPrint(line: Line): StepPrint {
  const text = stepText(line)
  return Object.fromEntries(vouched.map(part => [part, digest(text[part])])) as StepPrint
}

/** The result of a step as printed. */
export const stepResult = (line: Line): string => stepText(line).result

/** What is printed otherwise than it was when it was ticked. */
export const changedSince = (of: StepPrint, now: StepPrint): readonly Vouched[] =>
  vouched.filter(part => of[part] !== now[part])

const digest = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 8)
