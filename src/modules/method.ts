import type { DimensionName } from './dimension-name.ts'

/** What a numerical method answers: numbers by output name, and how it verified itself, in one sentence. */
export type Solved =
  | { readonly ok: true; readonly values: Readonly<Record<string, number>>; readonly verified: string }
  | { readonly ok: false; readonly says: string }

/**
 * A numerical method over plain SI numbers. Pure: equal numbers and words give equal answers, so answers are kept by
 * their inputs. Normalised methods take ratios, so that load and size only scale the answer outside.
 */
export interface Method {
  readonly id: string
  readonly title: string
  /** One sentence: how it works, its mesh or order. */
  readonly says: string
  /** Dimension of each number or list it takes. */
  readonly takes: Readonly<Record<string, DimensionName>>
  readonly run: (
    numbers: Readonly<Record<string, number | readonly number[]>>,
    words: Readonly<Record<string, string>>,
  ) => Solved
}
