import { describe, expect, it } from 'vitest'
import { stripSlipLines } from '../../../src/modules/ground/strip-slip-lines.ts'

const degrees = Math.PI / 180
const borne = (of: { phi: number; c?: number; gamma?: number; q?: number; width?: number }): number => {
  const { phi, c = 0, gamma = 0, q = 0, width = 2 } = of
  const solved = stripSlipLines.run({ phi: phi * degrees, c, gamma, q, width }, {})
  if (!solved.ok) throw new Error(solved.says)
  return solved.values.pressure as number
}
const factorQ = (phi: number): number =>
  Math.exp(Math.PI * Math.tan(phi * degrees)) * Math.tan((45 + phi / 2) * degrees) ** 2

describe('slip lines under a strip', () => {
  it('strip-slip-lines: clay bears what Prandtl found, whatever its weight and the load beside it', () => {
    // Prandtl 1920: 2 + pi
    expect(borne({ phi: 0, c: 1 })).toBeCloseTo(2 + Math.PI, 9)
    expect(borne({ phi: 0, c: 10, gamma: 18, q: 40 })).toBeCloseTo(10 * (2 + Math.PI) + 40, 6)
  })

  it('strip-slip-lines: weightless soil bears by the factors of Prandtl and Reissner', () => {
    for (const phi of [10, 20, 30, 40]) {
      const exact = factorQ(phi)
      expect(Math.abs(borne({ phi, q: 1 }) / exact - 1), `${phi}`).toBeLessThan(0.01)
      expect(Math.abs((borne({ phi, c: 1 }) * Math.tan(phi * degrees)) / (exact - 1) - 1), `${phi}`).toBeLessThan(0.01)
    }
  })

  it('strip-slip-lines: under less and less load beside it comes to the exact factor of weight of a rough base', () => {
    // C. M. Martin 2005, exact bearing capacity by the method of characteristics, rough strip (memory); 5 % for the load that is left
    for (const [phi, exact] of [
      [20, 2.839],
      [30, 14.75],
      [35, 34.48],
      [40, 85.57],
    ] as const) {
      const load = 0.003
      const weight = 2 * (borne({ phi, gamma: 1, q: load, width: 1 }) - load * factorQ(phi))
      expect(Math.abs(weight / exact - 1), `${phi}`).toBeLessThan(0.05)
    }
  })

  it('strip-slip-lines: strengths together bear more than each by itself, and size and load only scale', () => {
    const both = borne({ phi: 30, gamma: 18, q: 20 })
    expect(both).toBeGreaterThan(borne({ phi: 30, q: 20 }) + (14.75 * 18 * 2) / 2)
    expect(borne({ phi: 30, gamma: 9, q: 20, width: 4 })).toBeCloseTo(both, 6)
    expect(borne({ phi: 30, gamma: 36, q: 40 })).toBeCloseTo(2 * both, 6)
  })

  it('strip-slip-lines: gives no answer where nothing holds the edge', () => {
    expect(stripSlipLines.run({ phi: 30 * degrees, c: 0, gamma: 18, q: 0, width: 2 }, {}).ok).toBe(false)
  })
})
