import { length, pressure } from '../words.ts'

const areaLoad = { SI: 'kN/m^2', US: 'psf' }
const span = { SI: 'm', US: 'ft' }

/** Factored loads of a strip by their kind. The sketch and the second method take them as `g_u` and `q_u`. */
export const stripLoads = {
  dead_load: pressure({
    says: 'factored permanent load per area, self weight and cover included',
    note: 'From a `roof-load` block `roof` take `roof.g_u`',
    symbol: 'g_u',
    unit: areaLoad,
    above: '0 kN/m^2',
    usual: ['3 kN/m^2', '300 kN/m^2'],
  }),
  live_load: pressure({
    says: 'factored live load per area',
    note: 'From a `roof-load` block `roof` take `roof.q_u`',
    symbol: 'q_u',
    unit: areaLoad,
    least: '0 kN/m^2',
    usual: ['0 kN/m^2', '100 kN/m^2'],
  }),
} as const

/** The longest and the shortest span of a strip; `kind` says how a span is measured. */
export const stripSpans = (kind: 'effective' | 'clear') =>
  ({
    span: length({
      says: `longest span, ${kind}`,
      symbol: kind === 'clear' ? 'l_n' : 'l',
      unit: span,
      above: '0 m',
      usual: ['0.5 m', '8 m'],
    }),
    shortest_span: length({
      says: `shortest span, ${kind}`,
      symbol: kind === 'clear' ? 'l_n_min' : 'l_min',
      unit: span,
      above: '0 m',
      usual: ['0.5 m', '8 m'],
    }),
  }) as const
