import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { check, solve, step } from '../words.ts'
import { otherCircles } from './other-circles.ts'
import { slopeTaken } from './slope-circle-search.ts'

const ratio = { dimension: 'ratio' } as const

/** The circle in thin slices, and whether another search finds a worse one. */
export const slopeCircleSecond: Second = {
  title: 'Thin slices and another search',
  says: 'The same circle in many slices; then circles by centre and radius instead of by their ends. Ten slices may give a per cent too much, mostly on flat slopes in clay, so the lesser of these factors is held against the required one as well. The ordinary method, which leaves the forces between slices away, mostly gives less.',
  steps: [
    solve(otherCircles, {
      says: 'circle in thin slices, and worst circle of another search',
      source: cite('bishop-1955'),
      takes: { ...slopeTaken, x: 'x_0', y: 'y_0', radius: 'R', out: 'x_out', into: 'x_in' },
      gives: {
        thin: { ...ratio, name: 'F_thin', says: 'factor of the circle in thin slices', symbol: 'F_thin' },
        least: { ...ratio, name: 'F_net', says: 'least factor of the other search', symbol: 'F_net' },
        ordinary: { ...ratio, name: 'F_ord', says: 'factor of the circle by the ordinary method', symbol: 'F_ord' },
      },
    }),
    step('F_least', 'min(F_thin, F_net)', {
      says: 'lesser factor of thin slices and the other search',
      symbol: 'F_min',
      source: cite('bishop-1955'),
    }),
    check('stands_in_thin_slices', 'F_least >= factor', {
      says: 'nor does it slip in thin slices or on another circle',
      source: cite('bishop-1955'),
    }),
  ],
  compare: [
    { first: 'F_c', second: 'F_thin', band: 0.02, says: 'ten slices against two hundred' },
    { first: 'F_thin', second: 'F_net', band: 0.01, says: 'another search finds no worse circle' },
  ],
}
