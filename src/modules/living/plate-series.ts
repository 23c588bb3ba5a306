import type { Method } from '../method.ts'

/**
 * Stress and bending factor at the middle of a plate held on four edges under an even pressure, by Navier's double series with odd
 * terms up to `most`; `ratio` is the long side over the short one. Timoshenko and Woinowsky-Krieger, article 30.
 */
export function plateSeries(
  ratio: number,
  { poisson, most }: { readonly poisson: number; readonly most: number },
): { readonly stress: number; readonly bending: number } {
  let [deflection, moment] = [0, 0]
  for (let i = 1; i < most; i += 2)
    for (let j = 1; j < most; j += 2) {
      const along = (j / ratio) ** 2
      const term = ((i + j) / 2) % 2 === 1 ? 16 : -16
      const part = term / (Math.PI ** 6 * i * j * (i * i + along) ** 2)
      deflection += part
      moment += part * Math.PI ** 2 * (i * i + poisson * along)
    }
  return { stress: 6 * moment, bending: 12 * (1 - poisson ** 2) * deflection }
}

/** The factors of a leaf from its sides, for a Poisson ratio of 0.3. Refuses sides that are not above zero. */
export const plateBySeries: Method = {
  id: 'plate-series',
  title: 'Double series of the plate',
  says: 'The pressure as a double sine series with 150 odd terms each way, the bending of every term added up at the middle.',
  takes: { width: 'length', height: 'length' },
  run: ({ width, height }) => {
    const [one, other] = [Number(width), Number(height)]
    if (!(one > 0 && other > 0)) return { ok: false, says: 'the leaf has no sides' }
    const ratio = Math.max(one, other) / Math.min(one, other)
    const [coarse, fine] = [150, 300].map(most => plateSeries(ratio, { poisson: 0.3, most }).stress) as [number, number]
    const change = Math.abs(coarse / fine - 1)
    if (!(change < 1e-3)) return { ok: false, says: 'the series does not settle' }
    const values = plateSeries(ratio, { poisson: 0.3, most: 300 })
    return {
      ok: true,
      values: { ...values },
      verified: `half the terms change the stress by ${(100 * change).toPrecision(1)} %`,
    }
  },
}
