/** A share in percent, rounded up to so many decimals, so that the share is less or as much: `0.013`. Never nought, which nothing is less than. */
export const percentAbove = (share: number, decimals: number): string =>
  (Math.max(1, Math.ceil(share * 10 ** (decimals + 2))) / 10 ** decimals).toString()
