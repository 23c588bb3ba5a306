import type { CaseInput, PublishedCase } from '../module.ts'

const pump = { outlet_head: '0 m', efficiency: '0.5' }
/** 3 m of lowering in an aquifer with 8 m of water. */
const sand: Readonly<Record<string, CaseInput>> = {
  aquifer: 'unconfined',
  k: '1e-4 m/s',
  k_high: '1e-4 m/s',
  ring_length: '10 m',
  ring_width: '8 m',
  equivalent: 'equal area',
  depth: '3.5 m',
  margin: '0.5 m',
  water_depth: '1 m',
  aquifer_base: '9 m',
  ...pump,
}

/** Cases of `pit-inflow`. The recalled one is the equation of its wells, read the other way round. */
export const pitInflowCases: readonly PublishedCase[] = [
  {
    id: 'inf-1',
    source: 'Equal area and the formula of Sichardt, by hand',
    status: 'computed',
    says: 'a ring of 10 m by 8 m, 3 m of lowering in sand',
    inputs: sand,
    answers: { r_e: '5.0463 m', L_S: '90.0 m', drawdown: '3.0 m' },
  },
  {
    id: 'inf-2',
    source: 'Dupuit and Thiem, by hand',
    status: 'computed',
    says: 'the same, radius of influence with and without the ring added',
    inputs: sand,
    answers: { Q: '0.0041735 m^3/s' },
  },
  {
    id: 'inf-2b',
    source: 'Dupuit and Thiem, by hand',
    status: 'computed',
    says: 'the same with the reach of 90 m from the centre, as some books take it',
    inputs: { ...sand, reach: '90 m' },
    answers: { Q: '0.0042525 m^3/s' },
  },
  {
    id: 'inf-3',
    source: 'Thiem, by hand',
    status: 'computed',
    says: 'confined aquifer 5 m thick, 2 m of lowering, radii 6 m and 50 m',
    inputs: {
      aquifer: 'confined',
      k: '1e-4 m/s',
      k_high: '1e-4 m/s',
      ring_length: '10.634723 m',
      ring_width: '10.634723 m',
      equivalent: 'equal area',
      depth: '3 m',
      margin: '0.5 m',
      water_depth: '1.5 m',
      aquifer_top: '6 m',
      aquifer_base: '11 m',
      reach: '50 m',
      ...pump,
    },
    answers: { Q: '0.0029634 m^3/s' },
  },
  {
    id: 'inf-4',
    source:
      'B. M. Das, Principles of Geotechnical Engineering, pumping test of a gravity well: 100 gal/min, heads of 20 ft and 15 ft at 150 ft and 75 ft, permeability 0.0169 ft/min',
    status: 'memory',
    says: 'flow of a gravity well between its two observation wells',
    inputs: {
      aquifer: 'unconfined',
      k: '0.0169 ft/min',
      k_high: '0.0169 ft/min',
      ring_length: '117.81 ft',
      ring_width: '117.81 ft',
      equivalent: 'equal perimeter',
      depth: '8 ft',
      margin: '2 ft',
      water_depth: '5 ft',
      aquifer_base: '25 ft',
      reach: '150 ft',
      ...pump,
    },
    answers: { Q: '100 gpm' },
  },
]
