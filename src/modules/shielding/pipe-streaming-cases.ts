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

/** Straight pipes worked apart. */
export const pipeStreamingCases: readonly PublishedCase[] = [
  straight('PP-1a', { ...pipe, field: 'isotropic' }, '3.454242e-3'),
  straight('PP-1b', { ...pipe, field: 'cosine' }, '6.896552e-3'),
  straight('PP-1c', { ...pipe, field: 'emitters' }, '3.460221e-3'),
  straight('PP-2', { diameter: '200 mm', run: '1 m', field: 'isotropic' }, '4.962810e-3'),
]
