import type { ThinPlate } from '../numerics/thin-plate.ts'

/** What an elastic plate was held against: a coarser mesh, and the balance of its inner part. */
export const plateVerified = ({ change, innerBalance }: ThinPlate['verification']): string =>
  `moments change by ${percent(change.moment)} from a coarser mesh; the shears round the inner part differ from its load by ${percent(innerBalance)}`

const percent = (share: number) =>
  Math.abs(share) < 0.00005 ? 'less than 0.01 %' : `${(100 * Math.abs(share)).toFixed(2)} %`
