import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, choiceLimit, length, limit, ratio } from '../words.ts'
import { beyondTheFit, buildUpMedia } from './gamma-tables.ts'
import { photonEnergies, sourceSpectra } from './halving-tables.ts'
import { roofProtectionCases } from './roof-protection-cases.ts'
import { roofByHalvings } from './roof-protection-second.ts'
import { roofProtectionSteps } from './roof-protection-steps.ts'
import { slabLayers } from './slab-inputs.ts'

const { concrete, water } = buildUpMedia

/** Protection factor of a buried roof against fallout lying on it and on the ground round it. */
export const roofProtection = defineModule({
  id: 'roof-protection',
  version: '1.1.0',
  title: 'Protection factor of a buried roof',
  asks: 'By what factor do the roof and its cover cut the radiation of fallout that lies on them?',
  inputs: {
    layers: slabLayers,
    required_factor: ratio({
      says: 'required protection factor of the roof',
      symbol: 'P_req',
      least: '1',
      usual: ['10', '1e5'],
    }),
    energy: choice({
      says: 'middle photon energy',
      note: 'Behind deep cover at least 1.25 MeV',
      words: photonEnergies,
      default: '1.25 MeV',
    }),
    energy_hard: choice({ says: 'hard photon energy', words: photonEnergies, default: '2 MeV' }),
    build_up: choice({
      says: 'material whose build-up stands for the stack',
      words: { concrete, water },
      default: 'concrete',
    }),
    radius: length({
      says: 'radius of the contaminated area, if surely limited',
      note: 'Left out, the ground beside the roof counts without end: take it so unless shown otherwise',
      symbol: 'R_s',
      unit: { SI: 'm', US: 'ft' },
      above: '0 m',
      optional: true,
    }),
    height: length({
      says: 'air between the ceiling and the person',
      note: 'Only where the area is limited',
      symbol: 'h_a',
      unit: { SI: 'm', US: 'ft' },
      least: '0 m',
      most: '20 m',
      default: '0 m',
      source: cite('practice'),
    }),
    spectrum: choice({
      says: 'published set of halving thicknesses for the second method',
      words: { fallout: sourceSpectra.fallout, 'fallout 1962': sourceSpectra['fallout 1962'] },
      default: 'fallout',
    }),
  },
  steps: [
    ...roofProtectionSteps,
    check('protection', 'P >= required_factor', { says: 'the protection factor of the roof is as required' }),
  ],
  results: ['P', 'T', 'P_m', 'P_h', 'X_all', 'b_m', 'b_h'],
  covers: ['roof-shielding'],
  limits: [
    limit('X_all > 0 kg/m^2', {
      says: 'something stands between the fallout and the people',
      otherwise: 'refuse',
      on: 'layers',
      source: cite('point-kernel'),
    }),
    limit('max(b_m, b_h) <= 20', {
      says: 'the roof is at most 20 mean free paths deep',
      advice: 'There published build-up factors end',
      otherwise: 'refuse',
      on: 'layers',
      source: cite('buildup-media'),
    }),
    limit('min(b_m, b_h) >= 1', {
      says: 'the roof is at least 1 mean free path deep at both energies',
      advice: 'The build-up factors were fitted from there on',
      otherwise: 'warn',
      on: 'layers',
      source: cite('buildup-media'),
    }),
    choiceLimit('energy', ['1.25 MeV', '2 MeV'], {
      says: 'the middle energy is at least 1.25 MeV',
      advice: 'Less is not safe behind deep cover',
      otherwise: 'warn',
      on: 'energy',
      source: cite('point-kernel'),
    }),
    choiceLimit('energy_hard', ['2 MeV'], {
      says: 'the hard energy is 2 MeV',
      advice: 'Behind deep cover the hard end of the spectrum governs',
      otherwise: 'warn',
      on: 'energy_hard',
      source: cite('point-kernel'),
    }),
  ],
  cautions: [
    'The cover must be the least over the roof and its surround, after settlement and erosion.',
    'The entrance and the vents, not the roof, usually govern: add up all paths.',
    'A parapet that holds fallout, or a drain that gathers it, makes more of it than an even layer.',
    'The charts of barrier and geometry factors of the civil-defence manuals are not used: both factors are computed from a plane of one photon energy. Published statements for 3 ft of earth run from 1024 to about 5000; the two energies lie about the upper one.',
    beyondTheFit,
    {
      says: 'A limited area leaves out all fallout beyond its radius: show why none can lie there.',
      when: { given: 'radius' },
    },
  ],
  second: roofByHalvings,
  published: roofProtectionCases,
  example: {
    layers: [
      { layer: 'earth cover', material: 'packed earth', thickness: '450 mm' },
      { layer: 'roof slab', material: 'concrete', thickness: '300 mm' },
    ],
    required_factor: '500',
  },
})
