import type { PublishedCase } from '../module.ts'

const source = 'Share of the field at the mouth on the axis, integrated numerically over the mouth'

const straight = (
  id: string,
  pipe: { diameter: string; run: string; field: string },
  answer: string,
): PublishedCase => ({
  id,
  source,
  status: 'computed',
  says: `pipe of ${pipe.diameter}, ${pipe.run} long, field ${pipe.field}`,
  inputs: { ...pipe, required_factor: '1' },
  answers: { k_1: answer },
  tolerance: { relative: 1e-6 },
})

const pipe = { diameter: '100 mm', run: '0.6 m' }

/** Straight pipes worked apart, and the cone of a steradian. */
export const pipeStreamingCases: readonly PublishedCase[] = [
  straight('PP-1a', { ...pipe, field: 'isotropic' }, '3.454242e-3'),
  straight('PP-1b', { ...pipe, field: 'cosine' }, '6.896552e-3'),
  straight('PP-1c', { ...pipe, field: 'emitters' }, '3.460221e-3'),
  straight('PP-2', { diameter: '200 mm', run: '1 m', field: 'isotropic' }, '4.962810e-3'),
  {
    id: 'PP-3',
    source: 'Steradian: the cone that fills it opens by 65.54 degrees, in tables of units',
    status: 'memory',
    says: 'mouth seen under 65.54 degrees: one part in `2 * pi` of a half space, 0.159',
    inputs: { diameter: '2 * tan((65.54 deg) / 2) * (1 m)', run: '1 m', field: 'isotropic', required_factor: '1' },
    answers: { k_1: '0.159' },
  },
]
