import type { PublishedCase } from '../module.ts'

const inputs = { span: '4 m', shortest_span: '4 m', dead_load: '6 kN/m^2', live_load: '5 kN/m^2', spans: 'four spans' }

/** Worked by the coefficients of the two tables. */
export const oneWaySlabIs456Cases: readonly PublishedCase[] = [
  {
    id: 'one-1',
    source: 'IS 456:2000, Table 12, coefficients as reprinted on an examination page',
    status: 'looked up',
    says: '6 and `5 kN/m^2` on spans of 4 m',
    inputs,
    answers: { M_end: '16.0 kN*m/m', M_first: '-18.49 kN*m/m' },
  },
  {
    id: 'one-2',
    source: 'IS 456:2000, Table 13, coefficients read in a scan of the standard',
    status: 'looked up',
    says: '6 and `5 kN/m^2` on spans of 4 m',
    inputs,
    answers: { V_end: '18.6 kN/m', V_outer: '26.4 kN/m', V_inner: '25.2 kN/m' },
  },
]
