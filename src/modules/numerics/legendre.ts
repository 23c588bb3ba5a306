/** Legendre polynomials P_0 to P_n and their first derivatives at one place of -1 to 1. */
export type LegendreValues = { readonly value: readonly number[]; readonly slope: readonly number[] }

/**
 * Values and slopes of P_0 to P_`degree` at `s` (-1 to 1, ends included).
 * Source: three-term recurrence and P'_{k+1} = P'_{k-1} + (2k+1) P_k (NIST Digital Library of Mathematical Functions, 18.9; memory).
 */
export function legendre(degree: number, s: number): LegendreValues {
  const value = new Array<number>(degree + 1).fill(0)
  const slope = new Array<number>(degree + 1).fill(0)
  value[0] = 1
  for (let k = 0; k < degree; k++) {
    const old = value[k] as number
    const older = k > 0 ? (value[k - 1] as number) : 0
    value[k + 1] = ((2 * k + 1) * s * old - k * older) / (k + 1)
    slope[k + 1] = (k > 0 ? (slope[k - 1] as number) : 0) + (2 * k + 1) * old
  }
  return { value, slope }
}
