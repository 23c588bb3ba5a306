import { type LineLoad, type LoadStretch, loadMoment, loadStretches, placeOnSpan } from './line-load.ts'
import { finite, NumericRefusal } from './numeric-refusal.ts'

/** How an end of a beam is held. */
export type BeamEnd = 'pinned' | 'fixed' | 'free'

/** A single span of constant stiffness: `length` (m), how its start (x = 0) and end are held, and its load. */
export type BeamSpan = {
  readonly length: number
  readonly start: BeamEnd
  readonly end: BeamEnd
  readonly load: LineLoad
}

/**
 * Moment (N m, sagging positive), shear (N, the force of what lies before the place on what lies after it, positive
 * against the load), slope and deflection times EI (N m^2 and N m^3, along the load), at one place.
 */
export type BeamActions = {
  readonly moment: number
  readonly shear: number
  readonly slope: number
  readonly deflection: number
}

/** A beam solved: the actions at its start fix those everywhere. */
export type BeamSolution = {
  readonly span: BeamSpan
  readonly stretches: readonly LoadStretch[]
  readonly atStart: BeamActions
}

/**
 * Exact elastic solution of a span under a load that is straight between points, by integrals of the load in closed
 * form. Refuses a length that is not positive, ends on which no beam stands, and what `loadStretches` refuses.
 * Source: beam theory, EI w'''' = p, with the constants from the end conditions.
 */
export function solveBeam(span: BeamSpan): BeamSolution {
  const { length, start, end } = span
  checkedSpan(span)
  const stretches = loadStretches(span.load, length)
  const integral = (n: 0 | 1 | 2 | 3) => loadMoment(stretches, n, { from: 0, to: length })
  const sums = { i0: integral(0), i1: integral(1), i2: integral(2), i3: integral(3), l: length }
  const atStart = { moment: 0, shear: 0, slope: 0, deflection: 0, ...startActions[`${start}-${end}`]?.(sums) }
  return { span, stretches, atStart }
}

/** Refuses a length that is not positive and ends on which no beam stands (free-free, pinned-free, free-pinned). */
export function checkedSpan({ length, start, end }: BeamSpan): void {
  if (!(finite(length, 'length') > 0)) throw new NumericRefusal('length', `Expected \`length\` above 0, got ${length}`)
  if (`${start}-${end}` in startActions) return
  throw new NumericRefusal('ends', `Expected ends on which a beam stands, got ${start} and ${end}`)
}

type Sums = Readonly<Record<'i0' | 'i1' | 'i2' | 'i3' | 'l', number>>

/**
 * Actions at the start that are not nil, for each pair of ends. With i0 to i3 the integrals of p (l - s)^n / n!, at the
 * end: V = V0 - i0, M = M0 + V0 l - i1, slope = s0 - M0 l - V0 l^2/2 + i2, w = w0 + s0 l - M0 l^2/2 - V0 l^3/6 + i3.
 */
const startActions: Readonly<Record<string, (sums: Sums) => Partial<BeamActions>>> = {
  'pinned-pinned': ({ i1, i3, l }) => ({ shear: i1 / l, slope: (i1 * l) / 6 - i3 / l }),
  'fixed-fixed': ({ i2, i3, l }) => {
    const shear = (6 * i2) / l ** 2 - (12 * i3) / l ** 3
    return { shear, moment: i2 / l - (shear * l) / 2 }
  },
  'fixed-pinned': ({ i1, i3, l }) => {
    const shear = (1.5 * i1) / l - (3 * i3) / l ** 3
    return { shear, moment: i1 - shear * l }
  },
  'pinned-fixed': ({ i2, i3, l }) => {
    const shear = (3 * i2) / l ** 2 - (3 * i3) / l ** 3
    return { shear, slope: (shear * l * l) / 2 - i2 }
  },
  'fixed-free': ({ i0, i1, l }) => ({ shear: i0, moment: i1 - i0 * l }),
  'free-fixed': ({ i2, i3, l }) => ({ slope: -i2, deflection: i2 * l - i3 }),
}

/** Actions at a place (m, 0 to the length) of a solved beam. Refuses a place off the beam. */
export function beamActionsAt({ span, stretches, atStart }: BeamSolution, place: number): BeamActions {
  const x = placeOnSpan(place, span.length, 'x')
  const integral = (n: 0 | 1 | 2 | 3) => loadMoment(stretches, n, { from: 0, to: x })
  const { moment, shear, slope, deflection } = atStart
  return {
    moment: moment + shear * x - integral(1),
    shear: shear - integral(0),
    slope: slope - moment * x - (shear * x * x) / 2 + integral(2),
    deflection: deflection + slope * x - (moment * x * x) / 2 - (shear * x ** 3) / 6 + integral(3),
  }
}
