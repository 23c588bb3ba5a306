/** What a tick vouches for, in the order in which it is written. */
export const vouched = ['words', 'formula', 'source', 'inputs', 'result'] as const
export type Vouched = (typeof vouched)[number]

/** The characters of a step as printed, parted into what a checker vouches for. */
export type StepText = Readonly<Record<Vouched, string>>

/** Eight hexadecimal digits of SHA-256 for each part. */
export type StepPrint = Readonly<Record<Vouched, string>>
