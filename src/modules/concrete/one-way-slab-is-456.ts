import { defineModule, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, limit, step, when } from '../words.ts'
import { spanWords } from './continuous-strip.ts'
import { stripLoads, stripSpans } from './continuous-strip-inputs.ts'
import { continuousStripSecond, endElastic, innerTotal } from './continuous-strip-second.ts'
import { continuousStripSketch } from './continuous-strip-sketch.ts'
import { oneWaySlabIs456Cases } from './one-way-slab-is-456-cases.ts'

const areaLoad = { SI: 'kN/m^2', US: 'psf' }
const moment = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: { SI: 'kN*m/m', US: 'lbf*ft/ft' }, source: cite('is-456', 'Table 12') })
const shear = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: { SI: 'kN/m', US: 'plf' }, source: cite('is-456', 'Table 13') })
const partly = { choice: 'end_support', is: ['partly held'] }
const deep = { choice: 'spans', is: ['four spans', 'five spans or more'] }
const atEnds = cite('is-456', 'cl. 22.5.2')

const { 'two spans': _none, ...spanChoices } = spanWords

/** Moments and shears of a slab over three spans or more, by the coefficients of IS 456 Tables 12 and 13. */
export const oneWaySlabIs456 = defineModule({
  id: 'one-way-slab-is-456',
  version: '1.1.0',
  title: 'Continuous one-way slab by IS 456 coefficients',
  asks: 'What moments and shears act in a slab that runs one way over three spans or more?',
  code: 'IS 456:2000',
  inputs: {
    ...stripSpans('effective'),
    ...stripLoads,
    spans: choice({ says: 'how many spans the slab runs over', words: spanChoices }),
    end_support: choice({
      says: 'how the outermost support holds the slab',
      words: {
        free: 'the end turns freely',
        'partly held': 'built into a wall that holds it in part: hogging moment of one part in 24',
      },
      default: 'free',
    }),
  },
  steps: [
    step('w_u', 'dead_load + live_load', { says: 'factored load', unit: areaLoad }),
    moment('M_end', '(dead_load / 12 + live_load / 10) * span^2', 'sagging moment of an end span'),
    moment('M_mid', '(dead_load / 16 + live_load / 12) * span^2', 'sagging moment of an interior span'),
    moment('M_first', '-(dead_load / 10 + live_load / 9) * span^2', 'hogging moment at the first interior support'),
    when(deep, {
      yes: [
        moment('M_other', '-(dead_load / 12 + live_load / 9) * span^2', 'hogging moment at other interior supports'),
      ],
    }),
    when(partly, {
      yes: [
        step('M_edge', '-w_u * span^2 / 24', {
          says: 'hogging moment at the end support, held in part',
          unit: { SI: 'kN*m/m', US: 'lbf*ft/ft' },
          source: atEnds,
        }),
        step('V_end', '(0.4 * dead_load + 0.45 * live_load + 0.05 * w_u) * span', {
          says: 'shear at the end support, 0.05 more for the hold',
          unit: { SI: 'kN/m', US: 'plf' },
          source: atEnds,
        }),
      ],
      no: [
        step('M_edge', '0 kN*m/m', {
          says: 'no hogging moment: the end turns freely',
          unit: { SI: 'kN*m/m', US: 'lbf*ft/ft' },
        }),
        shear('V_end', '(0.4 * dead_load + 0.45 * live_load) * span', 'shear at the end support'),
      ],
    }),
    shear('V_outer', '0.6 * (dead_load + live_load) * span', 'shear at the first interior support, end span'),
    shear('V_inner', '(0.55 * dead_load + 0.6 * live_load) * span', 'shear at the first interior support, next span'),
  ],
  results: ['M_end', 'M_mid', 'M_first', 'M_other', 'M_edge', 'V_end', 'V_outer', 'V_inner', 'w_u'],
  covers: ['analysis'],
  limits: [
    limit('shortest_span <= span', {
      says: 'the shortest span is at most the longest',
      advice: 'Swap the two',
      otherwise: 'refuse',
      on: 'shortest_span',
    }),
    limit('span - shortest_span <= 0.15 * span', {
      says: 'the spans differ by at most 15 % of the longest',
      advice: 'Solve unlike spans as a continuous beam',
      otherwise: 'refuse',
      on: 'shortest_span',
      source: cite('is-456', 'cl. 22.5.1'),
    }),
  ],
  cautions: [
    'Hogging moments are negative here, sagging ones positive.',
    'For uniform loads on spans of one section; no redistribution may be made on top of the tables (22.5.1).',
    'Permanent load is what cannot go away: soil over a roof is, vehicles and stores are not.',
    'Where two unlike spans meet, the hogging moment may be taken as the mean of the two; here the longest span counts everywhere.',
    'Elsewhere than at the first interior support a shear of 0.5 for permanent and 0.6 for live load is asked for: less than the larger of the two given here.',
    'A slab cast with its walls turns them: where the end is not meant to hold, top steel is needed there all the same.',
  ],
  second: continuousStripSecond({
    spans: Object.keys(spanChoices),
    totals: [endElastic, when(deep, { yes: innerTotal('(M_first + M_other) / 2'), no: innerTotal('M_first') })],
    compare: [
      {
        first: 'M_end',
        second: 'M_end_el',
        band: 0.08,
        says: 'the coefficients are rounded: the beam has 93 to 101 %',
      },
      {
        first: 'M_first',
        second: 'M_first_el',
        band: 0.1,
        says: 'the coefficients are rounded and redistribute: the beam has up to 9 % more',
      },
      {
        first: 'M_mid_strip',
        second: 'M_mid_strip_el',
        band: 0.24,
        says: 'right for live load alone; for permanent load alone the table has up to 30 % too much',
      },
      {
        first: 'V_outer',
        second: 'V_outer_el',
        band: 0.04,
        says: 'the coefficient is rounded: the beam has up to 3 % more',
      },
    ],
  }),
  sketch: continuousStripSketch({
    edge: 'M_edge',
    end: 'M_end',
    first: 'M_first',
    middle: 'M_mid',
    other: 'M_other',
    vEnd: 'V_end',
    vOuter: 'V_outer',
    vInner: 'V_inner',
  }),
  published: oneWaySlabIs456Cases,
  example: {
    span: '3.2 m',
    shortest_span: '3.0 m',
    dead_load: '54 kN/m^2',
    live_load: '7.5 kN/m^2',
    spans: 'four spans',
    end_support: 'partly held',
  },
})
