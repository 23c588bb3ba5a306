import type { Input } from '../module.ts'
import { choice, label, length, list, quantity, ratio } from '../words.ts'
import { areaUnit, lengthUnit } from './ground-units.ts'

export const litres = { SI: 'L', US: 'gal' } as const

const used = (symbol: string, where: string) =>
  quantity('volume', {
    says: `emulsion that was used ${where}, from the record of the work`,
    symbol,
    unit: litres,
    least: '0 L',
    optional: true,
  })

/** What `soil-treatment` asks for: surfaces and edges with their rates, the dose, and what must be kept away from. */
export const soilTreatmentInputs = {
  areas: list('surfaces treated by area, each with its rate', {
    note: 'Bottom and sides of the pit, fill under a raft, the upright face of fill against walls',
    least: 1,
    most: 12,
    fields: {
      surface: label({ says: 'what is treated', optional: true }),
      area: quantity('area', { says: 'area', symbol: 'A', unit: areaUnit, above: '0 m^2' }),
      rate: quantity('length', {
        says: 'emulsion for each area',
        symbol: 'r_A',
        unit: { SI: 'L/m^2', US: 'gal/ft^2' },
        above: '0 L/m^2',
        usual: ['3 L/m^2', '10 L/m^2'],
      }),
      used_area: used('V_u', 'on it'),
    },
  }),
  edges: list('edges treated by length, each with its rate', {
    note: 'The outside perimeter, in rods or a trench; round pipes and joints',
    least: 1,
    most: 12,
    fields: {
      edge: label({ says: 'what is treated', optional: true }),
      run: length({ says: 'length', symbol: 'l_e', unit: lengthUnit, above: '0 m' }),
      edge_rate: quantity('area', {
        says: 'emulsion for each length, to the full depth',
        symbol: 'r_l',
        unit: { SI: 'L/m', US: 'gal/ft' },
        above: '0 L/m',
        usual: ['1.5 L/m', '20 L/m'],
      }),
      used_edge: used('V_v', 'along it'),
    },
  }),
  dose: ratio({
    says: 'product in the emulsion, volume in volume, by its label',
    symbol: 'c_p',
    unit: { SI: 'percent', US: 'percent' },
    above: '0',
    most: '0.2',
    usual: ['0.001', '0.1'],
  }),
  spare: ratio({
    says: 'spare for spills and dead volume',
    symbol: 'f_sp',
    unit: { SI: 'percent', US: 'percent' },
    least: '0',
    most: '0.5',
  }),
  nearest: length({
    says: 'distance to the nearest well, cistern, drain or air intake',
    symbol: 'd_near',
    unit: lengthUnit,
    least: '0 m',
  }),
  keep_away: length({
    says: 'distance to keep from it, by label and local law',
    symbol: 'd_keep',
    unit: lengthUnit,
    above: '0 m',
  }),
  ground: choice({
    says: 'state of the ground when it is treated',
    words: {
      moist: 'damp or dry, no rain due before it is covered',
      wet: 'wet or flooded, or rain due',
    },
  }),
} satisfies Readonly<Record<string, Input>>
