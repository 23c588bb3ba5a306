import { length, quantity, ratio } from '../words.ts'

const size = { SI: 'mm', US: 'in' }

/** Symbols of a code for what every check of one-way shear asks for. */
export interface ShearSymbols {
  readonly shear: string
  readonly thickness: string
  readonly ratio: string
  readonly thrust: string
}

/** Shear, depths, steel and thrust of a slab or wall, in the symbols of a code. */
export const shearInputs = (symbols: ShearSymbols) =>
  ({
    shear: quantity('force_per_length', {
      says: 'factored shear per width at the section',
      note: 'Its sign does not count',
      symbol: symbols.shear,
      unit: { SI: 'kN/m', US: 'plf' },
    }),
    thickness: length({
      says: 'overall depth of the section',
      symbol: symbols.thickness,
      unit: size,
      above: '0 mm',
      usual: ['100 mm', '1 m'],
    }),
    effective_depth: length({
      says: 'effective depth to the steel in tension',
      note: 'From a flexure block `roof_steel` take `roof_steel.d`',
      symbol: 'd',
      unit: size,
      above: '0 mm',
      usual: ['75 mm', '950 mm'],
    }),
    steel_ratio: ratio({
      says: 'steel in tension over the effective section',
      note: 'Only bars that are anchored past the section count. From a flexure block take its steel ratio',
      symbol: symbols.ratio,
      unit: { SI: 'percent', US: 'percent' },
      above: '0',
      most: '0.06',
      usual: ['0.001', '0.03'],
    }),
    thrust: quantity('force_per_length', {
      says: 'least factored thrust along the member, per width',
      note: 'It helps; nil is safe where there is no tension',
      symbol: symbols.thrust,
      unit: { SI: 'kN/m', US: 'plf' },
      least: '0 kN/m',
      default: '0 kN/m',
    }),
  }) as const

/** Cautions of every check of one-way shear. */
export const shearCautions: readonly string[] = [
  'The section may lie the effective depth from the face of a support only where the support is pressed by the member, the load is on the far face and no heavy load stands between.',
  'Only steel that goes on past the section and is anchored there counts.',
  'Water and axial tension, as in a floor that ties two walls, lessen the resistance: a member in tension is outside these lines.',
  'Punching round a column, a wheel or the end of a wall is another check.',
]
