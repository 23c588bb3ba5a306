import type { Method } from '../method.ts'
import { findRoot } from '../numerics/find-root.ts'

/** The one positive root of the equation of a cantilever wall in sand; put back, its terms balance. */
export const quarticEmbedment: Method = {
  id: 'quartic-embedment',
  title: 'Root of the equation of balance',
  says: 'The fourth power, A1 times the third, less A2 times the square, A3 times the depth and A4: the one positive depth at which this is nil.',
  takes: { A_1: 'length', A_2: 'area', A_3: 'volume', A_4: 'inertia' },
  run: numbers => {
    const [a, b, c, d] = ['A_1', 'A_2', 'A_3', 'A_4'].map(name => Number(numbers[name])) as [
      number,
      number,
      number,
      number,
    ]
    if (!(a >= 0 && b > 0 && c > 0 && d > 0)) return { ok: false, says: 'the equation has not the signs of a wall' }
    const balance = (x: number): number => (((x + a) * x - b) * x - c) * x - d
    // Beyond this bound the fourth power alone outweighs the three terms that are taken off.
    const most = 2 * Math.max(Math.sqrt(b), Math.cbrt(c), Math.sqrt(Math.sqrt(d)))
    const { root, residual } = findRoot(balance, { from: 0, to: most })
    return {
      ok: true,
      values: { depth: root },
      verified: `put back, the terms leave ${Math.abs(residual / d).toExponential(0)} of the last`,
    }
  },
}
