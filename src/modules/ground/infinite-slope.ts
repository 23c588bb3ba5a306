import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { angle, choice, length, limit, pressure, ratio } from '../words.ts'
import { groundLoad, moistWeight, saturatedWeight, waterWeight } from './ground-inputs.ts'
import { angleUnit, lengthUnit, pressureUnit } from './ground-units.ts'
import { infiniteSlopeCases } from './infinite-slope-cases.ts'
import { infiniteSlopeSketch } from './infinite-slope-sketch.ts'
import { infiniteSlopeSecond, infiniteSlopeSteps } from './infinite-slope-steps.ts'
import { saturatedNoLighter } from './saturated-weight.ts'

/** Sliding of long sloping ground along a plane below it, with water that seeps along the slope. */
export const infiniteSlope = defineModule({
  id: 'infinite-slope',
  version: '1.0.0',
  title: 'Long slope that slides along a plane',
  asks: 'Does the skin of the sloping ground stand against sliding along a plane below it?',
  inputs: {
    slope: angle({
      says: 'slope of the ground',
      symbol: 'beta',
      unit: angleUnit,
      above: '0 deg',
      most: '60 deg',
      usual: ['2 deg', '40 deg'],
    }),
    plane_depth: length({
      says: 'depth of the plane below the ground, measured upright',
      note: 'Where weaker ground, rock or an old slide begins; try several',
      symbol: 'z',
      unit: lengthUnit,
      above: '0 m',
      usual: ['0.5 m', '10 m'],
    }),
    below: choice({
      says: 'ground below the plane',
      words: {
        stronger: 'rock, or clearly stronger ground: the plane is the deepest that can slide',
        'the same': 'the same ground goes on',
      },
    }),
    gamma: moistWeight,
    gamma_sat: saturatedWeight,
    phi: angle({
      says: 'effective angle of friction on the plane, a low value',
      note: 'That of large strain where the ground has slid before',
      symbol: "phi'",
      unit: angleUnit,
      least: '5 deg',
      most: '50 deg',
      usual: ['15 deg', '42 deg'],
    }),
    c: pressure({
      says: 'effective cohesion on the plane, for the life of the slope',
      symbol: "c'",
      unit: pressureUnit,
      least: '0 kPa',
      usual: ['0 kPa', '15 kPa'],
      default: '0 kPa',
    }),
    water_height: length({
      says: 'height of the water above the plane, measured upright, at its highest',
      note: 'Seeping along the slope; the whole depth in a long rain',
      symbol: 'h_z',
      unit: lengthUnit,
      least: '0 m',
    }),
    surcharge: groundLoad('uniform load on the ground, for each level area'),
    factor: ratio({
      says: 'required factor of the slope',
      symbol: 'F_req',
      least: '1',
      usual: ['1.2', '2'],
    }),
    gamma_w: waterWeight,
  },
  steps: infiniteSlopeSteps,
  results: ['F_z', 'tau_f', 'tau_z', 'sigma_n', 'u_z'],
  covers: ['slope-plane'],
  limits: [
    saturatedNoLighter(),
    limit('water_height <= plane_depth', {
      says: 'the water stands no higher than the ground',
      otherwise: 'refuse',
      on: 'water_height',
    }),
    limit('sigma_n > u_z', {
      says: 'the water does not lift the ground off the plane',
      otherwise: 'refuse',
      on: 'water_height',
      source: cite('statics'),
    }),
    limit('c <= 0 kPa', {
      when: { choice: 'below', is: ['the same'] },
      says: 'ground that goes on below the plane has no cohesion',
      advice: 'With cohesion a deeper plane is worse: go down to stronger ground, or look for the worst circle',
      otherwise: 'warn',
      on: 'below',
      source: cite('das-geotechnical', 'infinite slope'),
    }),
  ],
  cautions: [
    'A slope many times as long as the plane is deep, and a slide along that plane alone. It does not answer for the whole slope: a slip on a circle, under a wall, a cut or a fill or through soft clay, is another check and may come first.',
    'Drained strength. Soft clay under a new fill or beside a new cut is checked undrained as well.',
    'Water that comes out of the slope, melts in it or is held up by frozen ground presses harder than seepage along the slope.',
    'A pit, a trench or a road cut into the foot of the slope takes its hold away: look at the slope as it will then be.',
  ],
  second: infiniteSlopeSecond,
  sketch: infiniteSlopeSketch,
  published: infiniteSlopeCases,
  example: {
    slope: '18 deg',
    plane_depth: '2.5 m',
    below: 'stronger',
    gamma: '18 kN/m^3',
    gamma_sat: '20 kN/m^3',
    phi: '33 deg',
    c: '2 kPa',
    water_height: '0.8 m',
    surcharge: '5 kPa',
    factor: '1.3',
  },
})
