import type { Method, Solved } from '../method.ts'
import { integrateCells } from '../numerics/integrate-cells.ts'
import { percentAbove } from '../percent-above.ts'
import { ordinate } from './envelope-ordinates.ts'

const slices = 400

/** Load of an envelope and its moment about formation, from its ordinates alone, by slices. */
export const envelopeSlices: Method = {
  id: 'envelope-slices',
  title: 'The envelope in slices',
  says: `The ordinate of the envelope at the middle and the edges of ${slices} level slices, added up by Simpson's rule.`,
  takes: { full: 'pressure', depth: 'length' },
  run: ({ full, depth }, { ground }) =>
    solved(ordinate(ground ?? '', { full: Number(full), depth: Number(depth) }), Number(depth)),
}

function solved(pressure: (z: number) => number, depth: number): Solved {
  const over = (f: (z: number) => number) => integrateCells(f, { from: 0, to: depth, cells: slices, rule: 'simpson' })
  const load = over(pressure)
  const moment = over(z => pressure(z) * (depth - z))
  return {
    ok: true,
    values: { load: load.value, moment: moment.value },
    verified: `half as many slices change the load by less than ${percentAbove((load.error ?? 0) / load.value, 5)} %`,
  }
}
