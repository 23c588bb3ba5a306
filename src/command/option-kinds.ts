import { InvalidArgumentError, Option } from 'commander'

/** The form of an answer, one of these words. */
export const format = (words: readonly string[], fallback: string): Option =>
  new Option('--format <format>', 'form of the answer').choices(words).default(fallback)

/** Reads a whole number between two others. */
export const countOf =
  (least: number, most: number) =>
  (text: string): number => {
    const count = /^\d+$/.test(text) ? Number(text) : Number.NaN
    if (count >= least && count <= most) return count
    throw new InvalidArgumentError(`It is a whole number from ${least} to ${most}.`)
  }

/** Reads a number of percent between two others. */
export const percentOf =
  (least: number, most: number) =>
  (text: string): number => {
    const percent = /^\d+(?:\.\d+)?$/.test(text) ? Number(text) : Number.NaN
    if (percent >= least && percent <= most) return percent
    throw new InvalidArgumentError(`It is a number of percent from ${least} to ${most}.`)
  }
