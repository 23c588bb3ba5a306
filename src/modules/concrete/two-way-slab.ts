import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, choiceLimit, length, limit, pressure, step } from '../words.ts'
import { panelWords } from './is456-table-26.ts'
import { twoWaySlabCases } from './two-way-slab-cases.ts'
import { momentSteps } from './two-way-slab-moments.ts'
import { platePoisson } from './two-way-slab-plate-steps.ts'
import { twoWaySlabSecond } from './two-way-slab-second.ts'
import { twoWaySlabSketch } from './two-way-slab-sketch.ts'

const span = { SI: 'm', US: 'ft' }
const lineLoad = { SI: 'kN/m', US: 'plf' }
const force = { SI: 'kN', US: 'lbf' }
const loadSplit = cite('is-456', 'cl. 24.5, Fig. 7')

/** Moments, edge loads and corner steel of a panel on four edges, by the coefficients of IS 456 Annex D. */
export const twoWaySlab = defineModule({
  id: 'two-way-slab',
  version: '1.0.1',
  title: 'Two-way slab by IS 456 coefficients',
  asks: 'What moments act in a panel held on four edges, and what does it put on its walls?',
  code: 'IS 456:2000',
  inputs: {
    short_span: length({
      says: 'short span, effective',
      symbol: 'l_x',
      unit: span,
      above: '0 m',
      usual: ['1 m', '8 m'],
    }),
    long_span: length({
      says: 'long span, effective',
      symbol: 'l_y',
      unit: span,
      above: '0 m',
      usual: ['1 m', '16 m'],
    }),
    load: pressure({
      says: 'factored load per area, self weight included',
      symbol: 'w',
      unit: { SI: 'kN/m^2', US: 'psf' },
      above: '0 kN/m^2',
      usual: ['5 kN/m^2', '300 kN/m^2'],
    }),
    edges: choice({ says: 'over which edges the slab runs on', words: panelWords }),
    corners: choice({
      says: 'whether the corners can lift',
      words: {
        'held down': 'walls or load above hold the corners down and corner steel is provided: Table 26',
        'free to lift': 'nothing holds the corners, no corner steel: Table 27, simply supported on four sides only',
      },
    }),
    poisson: platePoisson,
  },
  steps: [
    step('r', 'long_span / short_span', {
      says: 'ratio of the spans',
      source: cite('is-456', 'Annex D, D-1.11'),
    }),
    ...momentSteps,
    step('V_max', 'load * short_span / 2', {
      says: 'largest load on an edge, by lines at 45 degrees',
      unit: lineLoad,
      source: loadSplit,
    }),
    step('R_long', 'load * short_span * (2 * long_span - short_span) / 4', {
      says: 'load on each long edge (trapezium)',
      unit: force,
      source: loadSplit,
    }),
    step('R_short', 'load * short_span^2 / 4', {
      says: 'load on each short edge (triangle)',
      unit: force,
      source: loadSplit,
    }),
    step('q_long', 'R_long / long_span', { says: 'the same, mean over a long edge', unit: lineLoad }),
    step('q_short', 'R_short / short_span', { says: 'the same, mean over a short edge', unit: lineLoad }),
    check('load_carried', '2 * (R_long + R_short) == load * short_span * long_span', {
      says: 'the four edges carry the whole load',
      source: cite('statics'),
    }),
  ],
  results: ['M_x_mid', 'M_x_sup', 'M_y_mid', 'M_y_sup', 'V_max', 'q_long', 'q_short', 'c_two', 'c_one', 'r'],
  covers: ['analysis'],
  limits: [
    limit('long_span >= short_span', {
      says: 'the long span is at least the short span',
      advice: 'Swap the two',
      otherwise: 'refuse',
      on: 'long_span',
    }),
    limit('r <= 2', {
      when: { choice: 'corners', is: ['held down'] },
      says: 'the ratio of the spans is at most 2, as in Table 26',
      advice: 'Beyond it the slab spans one way: design the short span as a strip',
      otherwise: 'refuse',
      on: 'long_span',
      source: cite('is-456', 'Annex D, D-1.11'),
    }),
    limit('r <= 3', {
      when: { choice: 'corners', is: ['free to lift'] },
      says: 'the ratio of the spans is at most 3, as in Table 27',
      advice: 'Beyond it the slab spans one way: design the short span as a strip',
      otherwise: 'refuse',
      on: 'long_span',
      source: cite('is-456', 'Annex D, Table 27'),
    }),
    choiceLimit('edges', ['all discontinuous'], {
      when: { choice: 'corners', is: ['free to lift'] },
      says: 'corners free to lift go with discontinuous edges all round',
      advice: 'With a continuous edge the corners are held down',
      otherwise: 'refuse',
      on: 'corners',
      source: cite('is-456', 'Annex D, D-2.1'),
    }),
  ],
  cautions: [
    'Only for panels held on all four edges by walls or stiff beams under a uniform load; heavy concentrated loads are outside the table.',
    'Hogging moments and corner steel of the table assume neighbouring panels alike in span and load; others need an elastic analysis.',
    'An edge is continuous only if the steel over it is there and anchored: a roof slab that stops on a wall is discontinuous unless wall and slab are joined to carry the moment, and then the wall carries it too.',
    'No redistribution may be made on top of the table, and its moments are for the middle strips (D-1.3); the edge strips take least steel (D-1.7).',
    'Corner steel stands in four layers, two at the top and two at the bottom, each as the given part of the midspan steel of the short span.',
    'The table counts on redistribution at the supports: judge crack width at a buried or wet face by the elastic hogging moments of the second method.',
    {
      says: 'By yield lines the coefficients of this panel fall short of the load by as much as 9 %, and the elastic hogging moment at its short edge is as much as 2.7 times that of the table: give the short edges more steel than the table asks.',
      when: { choice: 'edges', is: ['two long edges discontinuous', 'one short edge continuous'] },
    },
    'Shear at a continuous edge can pass the 45 degree value by nearly half (second method): use the larger where shear governs.',
  ],
  second: twoWaySlabSecond,
  sketch: twoWaySlabSketch,
  published: twoWaySlabCases,
  example: {
    short_span: '3.4 m',
    long_span: '4.6 m',
    load: '57 kN/m^2',
    edges: 'two adjacent edges discontinuous',
    corners: 'held down',
  },
})
