import type { PublishedCase } from '../module.ts'

const layers = [
  { layer: 'sand', thickness: '5 m', gamma: '17 kN/m^3', gamma_sat: '20 kN/m^3' },
  { layer: 'clay', thickness: '4 m', gamma: '19 kN/m^3', gamma_sat: '19 kN/m^3' },
]

const craig = (id: string, depth: string, answers: PublishedCase['answers']): PublishedCase => ({
  id,
  source: "R. F. Craig, Craig's Soil Mechanics, stresses in sand over clay with water 3 m down",
  status: 'memory',
  says: `5 m of sand over 4 m of clay, at ${depth}`,
  inputs: { layers, depth, surcharge: '0 kPa', water_depth: '3 m', gamma_w: '9.8 kN/m^3' },
  answers,
})

/** Published cases of `soil-stress`; recalled, and recomputed. */
export const soilStressCases: readonly PublishedCase[] = [
  craig('str-1', '5 m', { sigma_v: '91.0 kPa', u: '19.6 kPa', sigma_eff: '71.4 kPa' }),
  craig('str-2', '9 m', { sigma_v: '167.0 kPa', u: '58.8 kPa', sigma_eff: '108.2 kPa' }),
  {
    id: 'str-3',
    source: 'Weight of water and soil over one square metre, by hand: 2 m of water on 3 m of soil',
    status: 'computed',
    says: 'water above the ground adds to total and pore stress alike, and not to effective stress',
    inputs: {
      layers: [{ thickness: '3 m', gamma: '18 kN/m^3', gamma_sat: '20 kN/m^3' }],
      depth: '3 m',
      surcharge: '0 kPa',
      water_depth: '-2 m',
      gamma_w: '10 kN/m^3',
    },
    answers: { sigma_v: '80 kPa', u: '50 kPa', sigma_eff: '30 kPa' },
    tolerance: { relative: 1e-9 },
  },
]
