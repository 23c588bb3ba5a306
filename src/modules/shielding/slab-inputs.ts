import type { Input, Step } from '../module.ts'
import { choice, label, length, list, look, quantity, step, when } from '../words.ts'
import { nominalDensity, shieldMaterials } from './halving-tables.ts'

/** Units of small thicknesses, densities and masses per area. */
export const thin = { SI: 'mm', US: 'in' }
export const densityUnit = { SI: 'kg/m^3', US: 'lb/ft^3' }
export const massUnit = { SI: 'kg/m^2', US: 'lb/ft^2' }

/** Layers with an own density where it is known, from the source inwards. */
export const slabLayers: Input = list('layers between the source and the people, from the source inwards', {
  least: 1,
  most: 20,
  fields: {
    layer: label({ says: 'what the layer is', optional: true }),
    material: choice({ says: 'material', words: shieldMaterials }),
    thickness: length({
      says: 'least thickness after settlement and erosion',
      symbol: 't',
      unit: thin,
      least: '0 mm',
      most: '20 m',
    }),
    density: quantity('density', {
      says: 'density as placed; nominal where left out',
      symbol: 'rho_p',
      unit: densityUnit,
      least: '100 kg/m^3',
      most: '23000 kg/m^3',
      usual: ['400 kg/m^3', '12000 kg/m^3'],
      optional: true,
    }),
  },
})

/** In each layer: `rho_layer` as given or nominal, and `X`, its mass per area. */
export const massOfLayer: readonly Step[] = [
  when(
    { given: 'density' },
    {
      yes: [step('rho_layer', 'density', { says: 'density as given', symbol: 'rho', unit: densityUnit })],
      no: [
        look('rho_layer', nominalDensity, {
          row: 'material',
          says: 'nominal density',
          symbol: 'rho',
          unit: densityUnit,
        }),
      ],
    },
  ),
  step('X', 'rho_layer * thickness', { says: 'mass per area', unit: massUnit }),
]
