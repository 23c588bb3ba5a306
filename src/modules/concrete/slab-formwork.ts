import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, label, length, limit, list, pressure, quantity, unitWeight } from '../words.ts'
import { slabFormworkCases } from './slab-formwork-cases.ts'
import { areaLoad, beamEnds, slabFormworkSteps } from './slab-formwork-steps.ts'

const span = { SI: 'm', US: 'ft' }

/** Load on the forms of a slab by the minima of ACI 347R, the beams under it, and the props. */
export const slabFormwork = defineModule({
  id: 'slab-formwork',
  version: '1.0.1',
  title: 'Forms and props under a slab',
  asks: 'Do sheathing, beams and props carry the wet roof slab at these spacings?',
  inputs: {
    thickness: length({
      says: 'thickness of the slab',
      symbol: 'D',
      unit: { SI: 'mm', US: 'in' },
      above: '0 mm',
      usual: ['100 mm', '1 m'],
    }),
    unit_weight: unitWeight({
      says: 'unit weight of the fresh concrete with its steel',
      symbol: 'gamma_fresh',
      unit: { SI: 'kN/m^3', US: 'pcf' },
      least: '15 kN/m^3',
      most: '45 kN/m^3',
      usual: ['24 kN/m^3', '27 kN/m^3'],
    }),
    forms_weight: pressure({
      says: 'weight of the forms themselves, on area',
      symbol: 'g_f',
      unit: areaLoad,
      least: '0 kPa',
      default: '0.5 kPa',
      source: cite('practice'),
    }),
    carting: choice({
      says: 'how the concrete is brought',
      words: { hand: 'pump, skip or barrow', 'motor carts': 'motorised carts on the deck' },
    }),
    beams: list('sheathing, joists and bearers, from the top down to the props', {
      least: 2,
      most: 6,
      fields: {
        beam: label({ says: 'what it is', optional: true }),
        span: length({ says: 'its span', symbol: 'l', unit: span, above: '0 m', most: '6 m' }),
        spacing: length({
          says: 'width that it carries',
          note: 'Spacing of the beams; for sheathing a strip of the width that its strength is given for',
          symbol: 's',
          unit: span,
          above: '0 m',
          most: '6 m',
        }),
        spans: choice({ says: 'over how many spans it runs', words: beamEnds }),
        moment_capacity: quantity('moment', {
          says: 'permissible moment',
          note: 'Permissible, as makers of formwork give it: no factor of the structure on it',
          symbol: 'M_p',
          unit: { SI: 'kN*m', US: 'lbf*ft' },
          above: '0 kN*m',
        }),
        shear_capacity: quantity('force', {
          says: 'permissible shear',
          symbol: 'V_p',
          unit: { SI: 'kN', US: 'lbf' },
          above: '0 kN',
        }),
        stiffness: quantity('flexural_rigidity', {
          says: 'bending stiffness',
          note: 'Modulus times second moment of area',
          symbol: 'K_b',
          unit: { SI: 'kN*m^2', US: 'lbf*ft^2' },
          above: '0 kN*m^2',
        }),
      },
    }),
    prop_capacity: quantity('force', {
      says: 'permissible load of a prop at its length',
      symbol: 'P_p',
      unit: { SI: 'kN', US: 'lbf' },
      above: '0 kN',
    }),
    panel_width: length({
      says: 'depth of the slab behind the edge that is braced',
      symbol: 'b_p',
      unit: span,
      above: '0 m',
      usual: ['1 m', '20 m'],
    }),
  },
  steps: slabFormworkSteps,
  results: ['w_f', 'P', 'h_b', 'w_D', 'w_L'],
  covers: ['temporary-works'],
  drawing: ['s_p', 's_b', 'P', 'h_b'],
  schedule: { title: 'Beams of the forms', list: 'beams', columns: ['beam', 'span', 'spacing', 'M_b', 'V_b', 'y_b'] },
  limits: [
    limit('thickness <= 1 m', {
      says: 'the slab is at most 1 m thick',
      advice: 'Cast a thicker one in two lifts, or design the falsework apart',
      otherwise: 'warn',
      on: 'thickness',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'A protective roof of 0.3 to 0.6 m loads its props far beyond the practice of houses. Props stand upright, on the raft or on sills over hard ground, braced both ways.',
    'A prop carries what its maker gives at its length and with its plates; worn and bent props carry less.',
    'The load grows while the pour stands heaped or runs from one side: spread it, and keep people from under it.',
    'Props stay until the slab carries itself, and longer where soil or plant comes on it: see the age of the concrete.',
    'A beam carries the load of its width: where what lies on it runs on over it, it gets up to a tenth more (a quarter over two spans).',
    'The shear is that of the worst number of spans, and the deflection of one or two spans is that of one.',
  ],
  published: slabFormworkCases,
  example: {
    thickness: '350 mm',
    unit_weight: '26 kN/m^3',
    carting: 'hand',
    beams: [
      {
        beam: 'plywood 21 mm, strip of 1 m',
        span: '0.4 m',
        spacing: '1 m',
        spans: 'three or more',
        moment_capacity: '0.8 kN*m',
        shear_capacity: '9 kN',
        stiffness: '6.5 kN*m^2',
      },
      {
        beam: 'joists',
        span: '1.2 m',
        spacing: '0.4 m',
        spans: 'three or more',
        moment_capacity: '5 kN*m',
        shear_capacity: '11 kN',
        stiffness: '450 kN*m^2',
      },
      {
        beam: 'bearers',
        span: '1.0 m',
        spacing: '1.2 m',
        spans: 'one or two',
        moment_capacity: '5 kN*m',
        shear_capacity: '11 kN',
        stiffness: '450 kN*m^2',
      },
    ],
    prop_capacity: '20 kN',
    panel_width: '4 m',
  },
})
