import { defineModule } from '../module.ts'
import { label, length, limit, list } from '../words.ts'
import { groundLoad, moistWeight, saturatedWeight, waterWeight } from './ground-inputs.ts'
import { lengthUnit } from './ground-units.ts'
import { saturatedNoLighter } from './saturated-weight.ts'
import { soilStressCases } from './soil-stress-cases.ts'
import { soilStressSketch } from './soil-stress-sketch.ts'
import { soilStressSteps } from './soil-stress-steps.ts'

/** Total, pore and effective vertical stress through layers and still water, down to one depth. */
export const soilStress = defineModule({
  id: 'soil-stress',
  version: '1.0.0',
  title: 'Vertical stress in the ground',
  asks: 'What are the total, pore and effective vertical stress at this depth, and on the way to it?',
  inputs: {
    layers: list('ground from its surface down', {
      note: 'Down to the depth asked for, or further',
      least: 1,
      most: 8,
      fields: {
        layer: label({ says: 'what the layer is', optional: true }),
        thickness: length({ says: 'thickness', symbol: 'h', unit: lengthUnit, above: '0 m' }),
        gamma: moistWeight,
        gamma_sat: saturatedWeight,
      },
    }),
    depth: length({
      says: 'depth at which the stress is asked for',
      symbol: 'z',
      unit: lengthUnit,
      above: '0 m',
      usual: ['0.3 m', '30 m'],
    }),
    surcharge: groundLoad('uniform load on the ground, wide against the depth'),
    water_depth: length({
      says: 'depth of the groundwater',
      note: 'Negative for water that stands above the ground; well below the depth asked for where the ground is dry',
      symbol: 'z_w',
      unit: lengthUnit,
      usual: ['0 m', '30 m'],
    }),
    gamma_w: waterWeight,
  },
  steps: soilStressSteps,
  results: ['sigma_v', 'u', 'sigma_eff'],
  covers: ['ground-stress'],
  limits: [
    saturatedNoLighter({ each: 'layers' }),
    limit('z_reached >= depth', {
      says: 'the layers reach down to the depth asked for',
      advice: 'Add the layers below',
      otherwise: 'refuse',
      on: 'layers',
    }),
  ],
  cautions: [
    'Water stands still at one level: artesian or perched water, and seepage to a pumped pit, change pore and effective stress.',
    'Water held above its level by capillarity is left out: the effective stress there is higher, and so this is on the safe side for strength.',
    'Which level of the water is on the safe side depends on the use: high water for uplift and strength, low water for settlement and for wells that are pumped.',
    {
      says: 'The load on the ground is counted in full at every depth: near the edge of a loaded area, or where the area is small, it spreads.',
      when: { formula: 'surcharge > 0 kPa' },
    },
  ],
  sketch: soilStressSketch,
  published: soilStressCases,
  example: {
    layers: [
      { layer: 'silty sand', thickness: '3.2 m', gamma: '18 kN/m^3', gamma_sat: '20 kN/m^3' },
      { layer: 'firm clay', thickness: '5 m', gamma: '18.5 kN/m^3', gamma_sat: '19 kN/m^3' },
    ],
    depth: '4.7 m',
    surcharge: '0 kPa',
    water_depth: '2.8 m',
  },
})
