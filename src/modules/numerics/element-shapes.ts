import { type LegendreValues, legendre } from './legendre.ts'

/** Values, first, second and third derivatives of a list of shapes at one place. */
export type ShapeValues = readonly [number[], number[], number[], number[]]

// Plain lists: a search makes some hundred thousand of these, and a typed array costs ten times as much to make.
function emptyShapes(count: number): ShapeValues {
  const empty = () => new Array<number>(count).fill(0)
  return [empty(), empty(), empty(), empty()]
}

// Cubics a0 + a1 s + a2 s^2 + a3 s^3: unit value at -1, unit slope at -1, unit value at +1, unit slope at +1.
const endCubics = [
  [0.5, -0.75, 0, 0.25],
  [0.25, -0.25, -0.25, 0.25],
  [0.5, 0.75, 0, -0.25],
  [-0.25, -0.25, 0.25, 0.25],
] as const

/**
 * The shapes of one element at `s` (-1 to 1), with derivatives by s: value and slope cubics of the first end, `inner`
 * twice integrated Legendre polynomials P_2, P_3, ... (no value and no slope at either end, second derivatives
 * orthogonal), value and slope cubics of the last end.
 * Source: hierarchic C1 shapes of the p-version (Szabo and Babuska, Finite Element Analysis; memory).
 */
export function elementShapes(inner: number, s: number): ShapeValues {
  const shapes = emptyShapes(inner + 4)
  for (let i = 0; i < 4; i++) putCubic(shapes, i < 2 ? i : i + inner, { cubic: endCubics[i as 0 | 1 | 2 | 3], s })
  const p = legendre(inner + 4, s)
  for (let k = 2; k < inner + 2; k++) putInner(shapes, k, p)
  return shapes
}

type Cubic = { readonly cubic: (typeof endCubics)[number]; readonly s: number }

function putCubic(shapes: ShapeValues, i: number, { cubic: [a0, a1, a2, a3], s }: Cubic): void {
  shapes[0][i] = a0 + s * (a1 + s * (a2 + s * a3))
  shapes[1][i] = a1 + s * (2 * a2 + 3 * s * a3)
  shapes[2][i] = 2 * a2 + 6 * s * a3
  shapes[3][i] = 6 * a3
}

function putInner(shapes: ShapeValues, k: number, p: LegendreValues): void {
  const [below, same, above] = [p.value[k - 2] as number, p.value[k] as number, p.value[k + 2] as number]
  const scale = Math.sqrt((2 * k + 1) / 2)
  const twice = (above - same) / (2 * k + 3) - (same - below) / (2 * k - 1)
  shapes[0][k] = (scale * twice) / (2 * k + 1)
  shapes[1][k] = (scale * ((p.value[k + 1] as number) - (p.value[k - 1] as number))) / (2 * k + 1)
  shapes[2][k] = scale * same
  shapes[3][k] = scale * (p.slope[k] as number)
}
