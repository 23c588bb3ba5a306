import { length, quantity } from '../words.ts'

const size = { SI: 'mm', US: 'in' }
const area = { SI: 'mm^2', US: 'in^2' }

/** Span of a slab or wall that is judged by its depth. */
export const spanOfMember = length({
  says: 'effective span; of a panel on four edges the shorter one',
  symbol: 'l',
  unit: size,
  above: '0 mm',
  usual: ['1 m', '10 m'],
})

/** Depth and steel at the place that sags most; `provided` is the code's symbol of the steel. */
export const depthAndSteel = (provided: string) =>
  ({
    effective_depth: length({
      says: 'effective depth at midspan, of a cantilever at its support',
      note: 'From a flexure block `roof_steel` take `roof_steel.d`',
      symbol: 'd',
      unit: size,
      above: '0 mm',
      usual: ['75 mm', '950 mm'],
    }),
    steel_required: quantity('area', {
      says: 'steel that strength asks for there, on the width',
      note: 'Without the least steel: from a flexure block take `A_req`',
      symbol: 'A_req',
      unit: area,
      above: '0 mm^2',
    }),
    steel_provided: quantity('area', {
      says: 'steel that is there, on the width',
      symbol: provided,
      unit: area,
      above: '0 mm^2',
    }),
    width: length({ says: 'width of the strip', symbol: 'b', unit: size, above: '0 mm', default: '1000 mm' }),
  }) as const

/** Cautions of every check of deflection by depth. */
export const spanDepthCautions: readonly string[] = [
  'The ratios were drawn for floors of buildings: under deep soil most of the load stays for good, and creep makes the most of it. Reckon the long-term deflection where the ratio is within a tenth of its limit.',
  'Finishes, tanks or doors that crack or jam with small movements need the deflection itself.',
  'Forms struck early, or fill placed on young concrete, add deflection that stays.',
]
