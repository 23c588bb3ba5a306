import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, choiceLimit, length, limit, quantity, ratio, step, when } from '../words.ts'
import { gammaSlabCases } from './gamma-slab-cases.ts'
import { planeAddedUp } from './gamma-slab-second.ts'
import { drawGammaSlab } from './gamma-slab-sketch.ts'
import { kermaRate, opticalThickness, throughBeam, throughPlane } from './gamma-slab-steps.ts'
import { beyondTheFit, buildUpMedia } from './gamma-tables.ts'
import { photonEnergies } from './halving-tables.ts'
import { slabLayers } from './slab-inputs.ts'

/** Transmission of a plane, point or beam source of one energy by the point kernel with build-up. */
export const gammaSlab = defineModule({
  id: 'gamma-slab',
  version: '1.1.0',
  title: 'Gamma transmission of a slab at one energy',
  asks: 'What share of gamma radiation of one energy comes through these layers from a plane, a point or a beam?',
  inputs: {
    layers: slabLayers,
    source: choice({
      says: 'shape of the source',
      words: {
        plane: 'emitters all over the outer face, equal in all directions: fallout on the ground or roof',
        point: 'one small source at a distance',
        beam: 'a parallel beam square to the layers',
      },
      default: 'plane',
    }),
    energy: choice({
      says: 'photon energy',
      note: 'For fallout behind deep cover 1.25 MeV is the least that is safe; work 2 MeV as well',
      words: photonEnergies,
    }),
    build_up: choice({
      says: 'material whose build-up stands for the stack',
      note: 'That of the layer next to the people where it is thicker than about 3 mean free paths, otherwise the largest of the layers; water is the largest',
      words: buildUpMedia,
      default: 'concrete',
    }),
    radius: length({
      says: 'radius of the plane source; without end where left out',
      symbol: 'R_s',
      unit: { SI: 'm', US: 'ft' },
      above: '0 m',
      optional: true,
    }),
    gap: length({
      says: 'air between the source and the person, stack not counted',
      note: 'Only where the plane has a radius: it lengthens the distance. 0 m is on the safe side',
      symbol: 'h_g',
      unit: { SI: 'm', US: 'ft' },
      least: '0 m',
      most: '100 m',
      default: '0 m',
      source: cite('practice'),
    }),
    strength: quantity('activity_per_area', {
      says: 'photons per area and time, emitted by the plane or in the beam',
      symbol: 'S_a',
      unit: { SI: 'Bq/cm^2', US: 'Bq/cm^2' },
      least: '0 Bq/cm^2',
      optional: true,
    }),
    required_factor: ratio({ says: 'required protection factor', symbol: 'P_req', least: '1', optional: true }),
  },
  steps: [
    ...opticalThickness,
    when({ choice: 'source', is: ['plane'] }, { yes: throughPlane, no: throughBeam }),
    step('P', '1 / T', { says: 'protection factor' }),
    kermaRate,
    when(
      { given: 'required_factor' },
      {
        yes: [check('protection', 'P >= required_factor', { says: 'the protection factor is as required' })],
      },
    ),
  ],
  results: ['P', 'T', 'b', 'B', 'X_all'],
  covers: ['roof-shielding'],
  limits: [
    limit('b > 0', {
      says: 'something stands between the source and the person',
      when: { choice: 'source', is: ['plane'] },
      advice: 'Right on a plane without end the fluence has no bound',
      otherwise: 'refuse',
      on: 'layers',
      source: cite('point-kernel'),
    }),
    limit('b <= 20', {
      says: 'the stack is at most 20 mean free paths deep',
      advice: 'There published build-up factors end',
      otherwise: 'refuse',
      on: 'layers',
      source: cite('buildup-media'),
    }),
    limit('b >= 1', {
      says: 'the stack is at least 1 mean free path deep',
      advice: 'The build-up factors were fitted from there on',
      otherwise: 'warn',
      on: 'layers',
      source: cite('buildup-media'),
    }),
    choiceLimit('source', ['plane'], {
      says: 'a radius is given for a plane source only',
      when: { given: 'radius' },
      otherwise: 'refuse',
      on: 'radius',
      source: cite('point-kernel'),
    }),
    choiceLimit('source', ['plane', 'beam'], {
      says: 'a strength per area is given for a plane source or a beam only',
      when: { given: 'strength' },
      advice: 'A point has a strength, not one per area',
      otherwise: 'refuse',
      on: 'strength',
      source: cite('point-kernel'),
    }),
    choiceLimit('build_up', ['concrete', 'water', 'iron'], {
      says: 'scattered radiation is counted',
      advice: 'A narrow beam promises several times too much behind a thick slab',
      otherwise: 'warn',
      on: 'build_up',
      source: cite('buildup-media'),
    }),
  ],
  cautions: [
    'One energy is no spectrum. Behind deep cover the hard end of fallout gamma is what is left: 0.7 MeV, its mean, is not a safe choice there.',
    'The protection factor of a plane source is over a point 1 m above the same emitters on open ground; that of a point or a beam is over the same place with nothing between.',
    'The emitters send equally in all directions and the strength counts the whole sphere. A surface that sends by the cosine law is another case.',
    'The build-up is that of an unlimited medium: a slab lets out a little less, on the safe side. Skyshine, gaps and ducts are not in it.',
    beyondTheFit,
    'Lead is taken with the build-up of the material chosen, for want of a checked figure of its own: treat a stack in which lead counts most as information.',
  ],
  second: planeAddedUp,
  sketch: drawGammaSlab,
  published: gammaSlabCases,
  example: {
    layers: [
      { layer: 'cover', material: 'packed earth', thickness: '450 mm' },
      { layer: 'roof slab', material: 'concrete', thickness: '300 mm' },
    ],
    source: 'plane',
    energy: '1.25 MeV',
    required_factor: '1000',
  },
})
