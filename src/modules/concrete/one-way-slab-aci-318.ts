import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, limit, when } from '../words.ts'
import { spanWords } from './continuous-strip.ts'
import { stripLoads, stripSpans } from './continuous-strip-inputs.ts'
import { continuousStripSecond, endTotal, innerTotal } from './continuous-strip-second.ts'
import { continuousStripSketch } from './continuous-strip-sketch.ts'
import { oneWaySlabAci318Cases } from './one-way-slab-aci-318-cases.ts'
import { aciStripSteps, held, manySpans, shortSpans } from './one-way-slab-aci-318-steps.ts'

/** Moments and shears of a slab over two spans or more, by the coefficients of ACI 318-19 6.5. */
export const oneWaySlabAci318 = defineModule({
  id: 'one-way-slab-aci-318',
  version: '1.1.0',
  title: 'Continuous one-way slab by ACI 318 coefficients',
  asks: 'What moments and shears act in a slab that runs one way over two spans or more?',
  code: 'ACI 318-19',
  inputs: {
    ...stripSpans('clear'),
    ...stripLoads,
    spans: choice({ says: 'how many spans the slab runs over', words: spanWords }),
    end_support: choice({
      says: 'how the outermost support holds the slab',
      words: {
        'turns freely': 'not cast with its support',
        'spandrel beam': 'cast with an edge beam',
        column: 'cast with a column; by common practice also with a wall',
      },
    }),
  },
  steps: aciStripSteps,
  results: ['M_end', 'M_mid', 'M_first', 'M_other', 'M_edge', 'V_outer', 'V_face', 'w_u'],
  covers: ['analysis'],
  limits: [
    limit('shortest_span <= span', {
      says: 'the shortest span is at most the longest',
      advice: 'Swap the two',
      otherwise: 'refuse',
      on: 'shortest_span',
    }),
    limit('span <= 1.2 * shortest_span', {
      says: 'the longest span is at most 1.2 times the shortest',
      advice: 'Only neighbours are compared in the code; solve unlike spans as a continuous beam',
      otherwise: 'refuse',
      on: 'shortest_span',
      source: cite('aci-318', '6.5.1'),
    }),
    limit('live_load / 1.6 <= 3 * dead_load / 1.2', {
      says: 'without load factors, live load is at most three times dead load',
      otherwise: 'refuse',
      on: 'live_load',
      source: cite('aci-318', '6.5.1'),
    }),
  ],
  cautions: [
    'Hogging moments are negative here, sagging ones positive.',
    'Clear spans between faces of supports; a hogging moment may rest on the mean of its two clear spans, here the longest counts everywhere.',
    'For uniform loads on prismatic members; moments found with these coefficients may not be redistributed (6.6.5).',
    {
      says: 'On knife edges the hogging moment of such short slabs is up to half as much again: judge cracks at a buried or wet face by that of the second method.',
      when: shortSpans,
    },
    'The load factors taken back from the ratio of live to dead load are 1.2 and 1.6.',
    {
      says: 'The table has no entry for a wall: cast with one, the end is held as the wall is stiff. Design the wall for the moment it takes.',
      when: { choice: 'end_support', is: held },
    },
  ],
  second: continuousStripSecond({
    spans: Object.keys(spanWords),
    totals: [...endTotal, when(manySpans, { yes: innerTotal('M_other') })],
    compare: [
      {
        first: 'M_first',
        second: 'M_first_el',
        band: 0.18,
        says: 'the code counts on supports that hold and on redistribution; knife edges have up to 18 % more',
        when: { formula: 'span > 10 ft' },
      },
      {
        first: 'M_end_strip',
        second: 'M_end_strip_el',
        band: 0.17,
        says: 'one coefficient for all shares of live load: the beam has 84 to 116 %',
      },
      {
        first: 'M_mid_strip',
        second: 'M_mid_strip_el',
        band: 0.26,
        says: 'one coefficient for all shares of live load: 81 % without any, 125 % with the most, short slabs',
        when: manySpans,
      },
      {
        first: 'V_outer',
        second: 'V_outer_el',
        band: 0.09,
        says: 'supports that hold even out the shear: knife edges have up to 9 % more',
      },
    ],
  }),
  sketch: continuousStripSketch({
    edge: 'M_edge',
    end: 'M_end',
    first: 'M_first',
    middle: 'M_mid',
    other: 'M_other',
    vEnd: 'V_face',
    vOuter: 'V_outer',
    vInner: 'V_face',
  }),
  published: oneWaySlabAci318Cases,
  example: {
    span: '10.5 ft',
    shortest_span: '10 ft',
    dead_load: '1100 psf',
    live_load: '160 psf',
    spans: 'three spans',
    end_support: 'column',
  },
})
