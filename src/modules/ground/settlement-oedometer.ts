import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, label, length, limit, list, pressure, ratio, unitWeight } from '../words.ts'
import { lengthUnit, pressureUnit, weightUnit } from './ground-units.ts'
import { saturatedNoLighter } from './saturated-weight.ts'
import { baseShape, pressesMore, pressingBase } from './settlement-inputs.ts'
import { settlementOedometerCases } from './settlement-oedometer-cases.ts'
import { settlementOedometerSecond } from './settlement-oedometer-second.ts'
import { settlementOedometerSteps } from './settlement-oedometer-steps.ts'

const index = (says: string, symbol: string, note?: string) =>
  ratio({ says, symbol, least: '0', most: '3', ...(note ? { note } : {}) })

/** Consolidation of clay under a base by its oedometer curve: recompression and, beyond the past stress, new compression. */
export const settlementOedometer = defineModule({
  id: 'settlement-oedometer',
  version: '2.0.0',
  title: 'Consolidation settlement',
  asks: 'How much does the raft settle as the clay below it consolidates?',
  inputs: {
    ...pressingBase,
    heave: choice({
      says: 'what the clay does while the pit is open',
      note: 'Neither is the truth: reckon both where the box weighs about as much as the ground dug out',
      words: {
        'no time to swell': 'the load is back within days: only what is more than the ground dug out settles it',
        swollen: 'it swells to the end, and goes down again under the whole load: the upper bound',
      },
    }),
    layers: list('layers below the base, from the base down', {
      note: 'Give sand between the clays with both indices 0; cut thick clays in two or three',
      least: 1,
      most: 10,
      fields: {
        layer: label({ says: 'what the layer is', optional: true }),
        thickness: length({ says: 'thickness', symbol: 'h', unit: lengthUnit, above: '0 m' }),
        gamma_layer: unitWeight({
          says: 'unit weight as it lies: saturated below the water',
          symbol: 'gamma_l',
          unit: weightUnit,
          least: '11 kN/m^3',
          usual: ['15 kN/m^3', '22 kN/m^3'],
        }),
        C_c: index('compression index', 'C_c', 'The slope for each tenfold stress, not each natural one'),
        C_r: index('recompression index', 'C_r', 'Often a fifth to a tenth of the compression index'),
        e_0: ratio({ says: 'void ratio', symbol: 'e_0', above: '0', most: '10', usual: ['0.3', '3'] }),
        sigma_p: pressure({
          says: 'greatest effective stress that the clay bore before',
          note: 'The preconsolidation pressure of the oedometer tests; it counts before `OCR`. Without either the clay is taken as normally consolidated, on the safe side',
          symbol: "sigma'_p",
          unit: pressureUnit,
          above: '0 kPa',
          optional: true,
        }),
        OCR: ratio({
          says: 'overconsolidation ratio of natural soil',
          note: 'The stress borne before over the present one; takes part where `sigma_p` is not given',
          symbol: 'OCR',
          least: '1',
          most: '30',
          usual: ['1', '8'],
          optional: true,
        }),
      },
    }),
  },
  steps: settlementOedometerSteps,
  results: ['s_all', 'p_net'],
  covers: ['settlement'],
  limits: [
    saturatedNoLighter(),
    baseShape,
    pressesMore('What settles then is only what has heaved while the pit was open: choose `swollen`', {
      when: { choice: 'heave', is: ['no time to swell'] },
    }),
    limit('pressure > u', {
      when: { choice: 'heave', is: ['swollen'] },
      says: 'the base presses harder than the water lifts it',
      advice: 'The base floats: see `flotation`',
      otherwise: 'refuse',
      on: 'pressure',
      source: cite('statics'),
    }),
    limit('min(layers.r_p) >= 1', {
      says: 'no clay bears more than it ever bore before',
      advice:
        'A stress borne before that is less than the present one is that of a disturbed sample, or of fill that still settles by itself',
      otherwise: 'refuse',
      on: 'layers',
      source: cite('das-geotechnical', 'overconsolidation ratio'),
    }),
    limit('sum(layers.thickness) >= 1.5 * width', {
      says: 'the layers reach to one and a half widths below the base',
      advice: 'Carry them to sand or rock, or further down: clay below still settles',
      otherwise: 'warn',
      on: 'layers',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'This is where it ends; how long it takes goes with the square of the way that the water has to go.',
    'Spread two to one, the stress is a mean under the base: the centre of a flexible base settles more.',
    'Immediate settlement comes first and is added. Creep goes on after, most of all in peat.',
    {
      says: 'The heave of the pit and its return under load are left out: in a pit open for weeks they are more than this.',
      when: { choice: 'heave', is: ['no time to swell'] },
    },
    {
      says: 'The bound holds with the water kept at the bottom of the open pit, and for clay that does not soften or swell by itself: blind it the day it is dug.',
      when: { choice: 'heave', is: ['swollen'] },
    },
    'The two indices and the past stress come from tests on good samples: a disturbed one hides the yield, and so most of its benefit.',
    'Lower groundwater, by pumping or drainage, settles the clay as much as a load.',
  ],
  second: settlementOedometerSecond,
  published: settlementOedometerCases,
  example: {
    width: '5.8 m',
    length: '9.2 m',
    depth: '1.2 m',
    pressure: '60 kPa',
    s_allow: '75 mm',
    gamma: '18 kN/m^3',
    gamma_sat: '19 kN/m^3',
    water_depth: '1.0 m',
    heave: 'no time to swell',
    layers: [
      {
        layer: 'stiff crust',
        thickness: '1.5 m',
        gamma_layer: '18.5 kN/m^3',
        C_c: '0.20',
        C_r: '0.03',
        e_0: '0.75',
        sigma_p: '150 kPa',
      },
      {
        layer: 'firm clay',
        thickness: '3 m',
        gamma_layer: '17.5 kN/m^3',
        C_c: '0.30',
        C_r: '0.05',
        e_0: '1.0',
        sigma_p: '90 kPa',
      },
      {
        layer: 'firm clay',
        thickness: '4.5 m',
        gamma_layer: '17.5 kN/m^3',
        C_c: '0.30',
        C_r: '0.05',
        e_0: '1.0',
        sigma_p: '110 kPa',
      },
    ],
  },
})
