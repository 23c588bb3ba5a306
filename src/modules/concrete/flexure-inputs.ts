import { choice, length, quantity } from '../words.ts'

const size = { SI: 'mm', US: 'in' }

/** Symbols of a code for the section and its bars. */
export interface FlexureSymbols {
  readonly thickness: string
  readonly cover: string
  readonly outer: string
  readonly bar: string
}

/** Moment, section and bars of a strip of slab or wall, in the symbols of a code. */
export const flexureInputs = (symbols: FlexureSymbols) =>
  ({
    moment: quantity('moment_per_length', {
      says: 'factored bending moment per width',
      note: 'Its sign does not count',
      symbol: 'M',
      unit: { SI: 'kN*m/m', US: 'lbf*ft/ft' },
    }),
    thickness: length({
      says: 'overall depth of the section',
      symbol: symbols.thickness,
      unit: size,
      above: '0 mm',
      usual: ['100 mm', '1 m'],
    }),
    cover: length({
      says: 'clear cover to the outermost bar, face in tension',
      symbol: symbols.cover,
      unit: size,
      least: '0 mm',
      usual: ['20 mm', '100 mm'],
    }),
    face: choice({
      says: 'face in tension',
      note: 'It places the bars in the sketch and changes no number',
      words: {
        bottom: 'sagging, or the lower face',
        top: 'hogging, or the upper face',
        outer: 'of a wall: the face towards the ground, drawn above',
        inner: 'of a wall: the face towards the room, drawn below',
      },
      default: 'bottom',
    }),
    outer_bar: length({
      says: 'diameter of the bars between these and the face',
      note: 'Nil for the outermost layer',
      symbol: symbols.outer,
      unit: size,
      least: '0 mm',
      default: '0 mm',
    }),
    bar_size: length({
      says: 'diameter of the bars',
      symbol: symbols.bar,
      unit: size,
      above: '0 mm',
      usual: ['6 mm', '32 mm'],
    }),
    spacing: length({
      says: 'spacing of the bars, centre to centre',
      symbol: 's',
      unit: size,
      above: '0 mm',
      usual: ['75 mm', '300 mm'],
    }),
  }) as const

/** Aggregate and width, which stand last. */
export const stripInputs = {
  aggregate: length({
    says: 'largest nominal size of the aggregate',
    symbol: 'd_a',
    unit: size,
    above: '0 mm',
    usual: ['10 mm', '40 mm'],
    default: '20 mm',
  }),
  width: length({
    says: 'width of the strip that is designed',
    symbol: 'b',
    unit: size,
    above: '0 mm',
    default: '1000 mm',
  }),
} as const
