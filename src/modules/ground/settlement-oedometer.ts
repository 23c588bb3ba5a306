import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { label, length, limit, list, pressure, ratio, solve, unitWeight } from '../words.ts'
import { claySlices } from './clay-slices.ts'
import { lengthUnit, pressureUnit, weightUnit } from './ground-units.ts'
import { pressingBase, settlementLimits, settlementUnit } from './settlement-inputs.ts'
import { settlementOedometerCases } from './settlement-oedometer-cases.ts'
import { settlementOedometerSteps } from './settlement-oedometer-steps.ts'

const index = (says: string, symbol: string, note?: string) =>
  ratio({ says, symbol, least: '0', most: '3', ...(note ? { note } : {}) })

/** Consolidation of clay under a base by its oedometer curve, net of the ground dug out. */
export const settlementOedometer = defineModule({
  id: 'settlement-oedometer',
  version: '1.0.1',
  title: 'Consolidation settlement',
  asks: 'How much does the raft settle as the clay below it consolidates?',
  inputs: {
    ...pressingBase,
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
          note: 'Left out, the clay is taken as normally consolidated, on the safe side',
          symbol: "sigma'_p",
          unit: pressureUnit,
          least: '0 kPa',
          default: '0 kPa',
        }),
      },
    }),
  },
  steps: settlementOedometerSteps,
  results: ['s_all', 'p_net'],
  covers: ['settlement'],
  limits: [
    ...settlementLimits,
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
    'The heave of the pit and its return under load are not counted: in clay left open for weeks they are worth a reckoning.',
    'Lower groundwater, by pumping or drainage, settles the clay as much as a load.',
  ],
  second: {
    title: 'Consolidation by slices',
    says: 'The same clay cut into thin slices, each followed along its curve: it shows where layers are too thick to go by their middle.',
    steps: [
      solve(claySlices, {
        takes: {
          thickness: { list: 'layers.thickness' },
          gamma: { list: 'layers.gamma_layer' },
          C_c: { list: 'layers.C_c' },
          C_r: { list: 'layers.C_r' },
          e_0: { list: 'layers.e_0' },
          sigma_p: { list: 'layers.sigma_p' },
          width: 'width',
          length: 'length',
          depth: 'depth',
          q_n: 'p_net',
          stress: 'q_tot',
          gamma_w: 'gamma_w',
          water: 'water_depth',
        },
        gives: {
          settlement: {
            dimension: 'length',
            name: 's_slices',
            says: 'settlement by slices',
            symbol: 's_sl',
            unit: settlementUnit,
          },
        },
        says: 'settlement added up slice by slice',
      }),
    ],
    compare: [
      { first: 's_all', second: 's_slices', band: 0.1, says: 'beyond this the layers are too thick: cut them' },
    ],
  },
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
