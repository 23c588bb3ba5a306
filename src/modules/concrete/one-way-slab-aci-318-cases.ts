import type { PublishedCase } from '../module.ts'

const source = 'ACI 318-19, Table 6.5.2, worked for 250 psf on clear spans of 14 ft'
const inputs = {
  span: '14 ft',
  shortest_span: '14 ft',
  dead_load: '200 psf',
  live_load: '50 psf',
  spans: 'three spans',
}

/** Worked by the coefficients of the table. */
export const oneWaySlabAci318Cases: readonly PublishedCase[] = [
  {
    id: 'one-3a',
    source,
    status: 'memory',
    says: 'end turns freely: one part in 11, 10 and 16',
    inputs: { ...inputs, end_support: 'turns freely' },
    answers: { M_end: '4455 lbf*ft/ft', M_first: '-4900 lbf*ft/ft', M_mid: '3063 lbf*ft/ft' },
  },
  {
    id: 'one-3b',
    source,
    status: 'memory',
    says: 'end cast with its support: one part in 14',
    inputs: { ...inputs, end_support: 'column' },
    answers: { M_end: '3500 lbf*ft/ft' },
  },
]
