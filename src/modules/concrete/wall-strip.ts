import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, choiceLimit, label, length, limit, list, pressure, quantity, ratio, unitWeight } from '../words.ts'
import { wallStripCases } from './wall-strip-cases.ts'
import { endSteps } from './wall-strip-ends.ts'
import { loadSteps } from './wall-strip-loads.ts'
import { wallStripSecond } from './wall-strip-second.ts'
import { wallStripSketch } from './wall-strip-sketch.ts'
import { spanSteps, thrustSteps } from './wall-strip-steps.ts'

const depth = { SI: 'm', US: 'ft' }

/** Moments, shears and thrust of a wall that spans from raft to roof under a pressure diagram. */
export const wallStrip = defineModule({
  id: 'wall-strip',
  version: '1.0.1',
  title: 'Wall strip spanning vertically',
  asks: 'What moments and shears does this pressure make in the wall, and what thrust does it carry?',
  inputs: {
    height: length({
      says: 'height of the strip between its supports',
      symbol: 'H',
      unit: depth,
      above: '0 m',
      usual: ['1.5 m', '6 m'],
    }),
    diagram: list('points of the pressure diagram, from the top of the strip to its base', {
      note: 'The pressure is straight between them; two points at one depth make a jump. From an `earth-pressure` block `earth` take `earth.z_upper_1`, `earth.z_kink_above_1`, `earth.z_water_1`, `earth.z_kink_below_1`, `earth.z_lower_1`, less the depth of the top of the wall, with `earth.p_upper_1` and so on, then the same for layer 2. The kinks are there where a roller or cohesion is reckoned with.',
      least: 2,
      most: 24,
      fields: {
        at: label({ says: 'what is at this depth', optional: true }),
        z: length({ says: 'depth below the top of the strip', symbol: 'z_d', unit: depth, least: '0 m' }),
        p: pressure({
          says: 'pressure on the wall',
          unit: { SI: 'kPa', US: 'psf' },
          least: '0 kPa',
          usual: ['0 kPa', '300 kPa'],
        }),
      },
    }),
    load_factor: ratio({
      says: 'load factor on the diagram',
      note: '1 where the pressures are factored already, or for service',
      symbol: 'gamma_f',
      least: '0.5',
      most: '3',
      default: '1',
    }),
    base: choice({
      says: 'how the raft holds the wall',
      words: { fixed: 'starter bars and raft carry the moment', pinned: 'held against sliding only' },
    }),
    top: choice({
      says: 'how the roof holds the wall',
      words: {
        pinned: 'propped by the cured roof, no moment',
        fixed: 'wall and roof joined to carry the moment',
        free: 'no roof yet, or none: a cantilever',
      },
    }),
    thickness: length({
      says: 'thickness of the wall',
      symbol: 't_w',
      unit: depth,
      above: '0 m',
      usual: ['150 mm', '1 m'],
    }),
    wall_weight: unitWeight({
      says: 'unit weight of the wall, a low value',
      note: 'Low, since thrust helps bending',
      symbol: 'gamma_c',
      unit: { SI: 'kN/m^3', US: 'pcf' },
      least: '0 kN/m^3',
      usual: ['22 kN/m^3', '25 kN/m^3'],
      default: '24 kN/m^3',
    }),
    roof_reaction: quantity('force_per_length', {
      says: 'least load of the roof on the wall, without a load factor',
      symbol: 'N_r',
      unit: { SI: 'kN/m', US: 'plf' },
      least: '0 kN/m',
      default: '0 kN/m',
    }),
  },
  steps: [...loadSteps, ...endSteps, ...spanSteps, ...thrustSteps],
  results: ['M_base', 'M_top', 'M_span', 'z_m', 'R_base', 'R_top', 'P_q', 'N_base'],
  covers: ['analysis'],
  limits: [
    choiceLimit('top', ['pinned', 'fixed'], {
      when: { choice: 'base', is: ['pinned'] },
      says: 'the roof holds the top of a wall with a pinned base',
      advice: 'Fix the base, or let the roof hold the top',
      otherwise: 'refuse',
      on: 'top',
    }),
    limit('z_first <= 1 mm', {
      says: 'the diagram begins at the top of the strip',
      otherwise: 'refuse',
      on: 'diagram',
    }),
    limit('abs(z_last - height) <= 1 mm', {
      says: 'the diagram ends at the base of the strip',
      otherwise: 'refuse',
      on: 'diagram',
    }),
    limit('abs(sum(diagram.h_s) - z_last) <= 2 mm', {
      says: 'each point of the diagram is below the one before',
      otherwise: 'refuse',
      on: 'diagram',
    }),
    limit('P_q > 0 N/m', { says: 'there is a load on the strip', otherwise: 'refuse', on: 'diagram' }),
    choiceLimit('top', ['pinned', 'fixed'], {
      when: { choice: 'base', is: ['fixed'] },
      says: 'the roof holds the top of the wall',
      advice: 'A free top is for a stage of building, or for a wall without a roof',
      otherwise: 'warn',
      on: 'top',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'The wall is propped only once the roof is cast and has its strength: check the stage with a free top, or forbid filling before.',
    'A pinned base is an assumption about the steel in the joint. Where it is unsure, design for both.',
    'A strip ignores the cross walls: near corners the wall spans sideways too, and needs horizontal steel there.',
    'Hogging moments (tension on the loaded face) are negative here, sagging ones positive.',
    'Pressure that stops, such as water that falls or a fill placed on one side only, is a case of its own: the largest pressure need not govern every section.',
    'Thrust helps bending: use the least roof load with it, before the cover is placed.',
  ],
  second: wallStripSecond,
  sketch: wallStripSketch,
  published: wallStripCases,
  example: {
    height: '2.6 m',
    diagram: [
      { at: 'underside of roof', z: '0 m', p: '22 kPa' },
      { at: 'ground water', z: '1.0 m', p: '32 kPa' },
      { at: 'top of raft', z: '2.6 m', p: '57 kPa' },
    ],
    load_factor: '1.5',
    base: 'fixed',
    top: 'pinned',
    thickness: '300 mm',
    roof_reaction: '60 kN/m',
  },
})
