/** No value is greater than this in coherent SI: beyond it a change of unit could overflow, and no work of ours comes near. */
const greatest = 1e200

/** The number, or NaN where it is none or too great. */
export const settled = (si: number): number => (Math.abs(si) <= greatest ? si : Number.NaN)
