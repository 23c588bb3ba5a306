import { defineModule, type PublishedCase } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, limit } from '../words.ts'
import { stripLoads } from './continuous-strip-inputs.ts'
import { panelWords } from './is456-table-26.ts'
import { twoWaySlabAci63Second } from './two-way-slab-aci-63-second.ts'
import { method3Steps } from './two-way-slab-aci-63-steps.ts'
import { platePoisson } from './two-way-slab-plate-steps.ts'
import { twoWaySlabSketch } from './two-way-slab-sketch.ts'

const span = { SI: 'm', US: 'ft' }

const cornerPanel: PublishedCase = {
  id: 'slab-14',
  source: 'Nilson, Darwin and Dolan, Design of concrete structures, example of Method 3 (case 4, ratio 0.8)',
  status: 'memory',
  says: 'corner panel, clear spans 20 and 25 ft, factored dead load 97 psf and live load 219 psf',
  inputs: {
    short_span: '20 ft',
    long_span: '25 ft',
    dead_load: '97 psf',
    live_load: '219 psf',
    edges: 'two adjacent edges discontinuous',
  },
  answers: {
    M_x_sup: '8970 lbf*ft/ft',
    M_y_sup: '5730 lbf*ft/ft',
    M_x_mid: '5718 lbf*ft/ft',
    M_y_mid: '3708 lbf*ft/ft',
  },
  tolerance: { relative: 0.002 },
}

/** Moments and edge loads of a panel on four stiff edges, by the coefficients of ACI 318-63, Method 3. */
export const twoWaySlabAci63 = defineModule({
  id: 'two-way-slab-aci-63',
  version: '1.0.1',
  title: 'Two-way slab by ACI 318-63, Method 3',
  asks: 'What moments act in a panel held on four stiff edges, and what does it put on its walls?',
  code: 'ACI 318-63',
  inputs: {
    short_span: length({
      says: 'short span, clear',
      symbol: 'l_a',
      unit: span,
      above: '0 m',
      usual: ['1 m', '8 m'],
    }),
    long_span: length({ says: 'long span, clear', symbol: 'l_b', unit: span, above: '0 m', usual: ['1 m', '16 m'] }),
    ...stripLoads,
    edges: choice({ says: 'over which edges the slab runs on', words: panelWords }),
    poisson: platePoisson,
  },
  steps: method3Steps,
  results: ['M_x_mid', 'M_x_sup', 'M_x_dis', 'M_y_mid', 'M_y_sup', 'M_y_dis', 'V_long', 'V_short', 'load'],
  covers: ['analysis'],
  limits: [
    limit('long_span >= short_span', {
      says: 'the long span is at least the short span',
      advice: 'Swap the two',
      otherwise: 'refuse',
      on: 'long_span',
    }),
    limit('m_s >= 0.5', {
      says: 'the short span is at least half the long one, as in the tables',
      advice: 'Beyond it the slab spans one way: design the short span as a strip',
      otherwise: 'refuse',
      on: 'long_span',
      source: cite('aci-318-63', 'Method 3'),
    }),
  ],
  cautions: [
    'Later codes have dropped the method; practice keeps it for panels on walls or beams much stiffer than the slab. It is not for slabs on columns.',
    'Each moment takes its own span squared with its own coefficient, unlike the tables of other codes. Spans are clear spans.',
    'The moments are for the middle strips, half the panel wide; in the strips beside the edges they fall to a third at the edge.',
    'The hogging moments count on redistribution: judge cracks at a buried or wet face by the elastic ones of the second method.',
    'The shears are means along an edge: the elastic peak, which the second method gives, is up to 2.4 times as much and is the one to check shear with.',
    'In a long panel the elastic hogging moment at a short edge is several times that of the table, so that the long span is compared in nearly square panels only: give the short edges more steel than it asks.',
    'Where the hogging moments of two neighbours differ by more than a fifth, the difference is shared out by their stiffness.',
    'Corners where two discontinuous edges meet need steel top and bottom, both ways, over a fifth of the long span, for the largest sagging moment (ACI 318-19, 8.7.3).',
    'Only for uniform load; heavy concentrated loads are outside the tables.',
  ],
  second: twoWaySlabAci63Second,
  sketch: twoWaySlabSketch,
  published: [cornerPanel],
  example: {
    short_span: '3.4 m',
    long_span: '4.6 m',
    dead_load: '49 kN/m^2',
    live_load: '8 kN/m^2',
    edges: 'two adjacent edges discontinuous',
  },
})
