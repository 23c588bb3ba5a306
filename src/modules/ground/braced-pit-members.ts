import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, solve, step, when } from '../words.ts'
import { moment } from './braced-pit-envelope.ts'
import { forceUnit, lineLoadUnit, lineMomentUnit } from './ground-units.ts'
import { largest } from './largest.ts'

const memberMoment = { SI: 'kN*m', US: 'lbf*ft' }
const statics = cite('statics')

/** Boards between soldier piles: the ground arches, so that they bear a part of the pressure. */
const lagging: readonly Step[] = [
  step('M_pile', 'M_wall * pile_spacing', { says: 'moment in a soldier pile', unit: memberMoment, source: statics }),
  moment('M_lag', 'lagging_share * p_e * pile_spacing^2 / 8', {
    says: 'moment in the lagging, for one height of it',
    symbol: 'M_l',
  }),
  when(
    { given: 'lagging_stress' },
    {
      yes: [
        step('t_lag', 'sqrt(6 * M_lag / lagging_stress)', {
          says: 'thickness of the lagging that its bending stress asks for',
          symbol: 't_l',
          unit: { SI: 'mm', US: 'in' },
          source: statics,
        }),
      ],
    },
  ),
]

/** Struts, walers, wall or soldier piles, and lagging. */
export const bracedPitMembers: readonly Step[] = [
  solve(largest('force_per_length'), {
    takes: { values: { list: 'struts.R_s' }, other: 'R_low' },
    gives: {
      largest: {
        dimension: 'force_per_length',
        name: 'R_max',
        says: 'largest reaction of a strut level',
        unit: lineLoadUnit,
      },
    },
    says: 'the level that bears most',
  }),
  step('N_max', 'R_max * spacing', { says: 'load of the most loaded strut', unit: forceUnit, source: statics }),
  step('M_waler', 'R_max * spacing^2 / 8', {
    says: 'moment in the waler there, as a simple beam',
    symbol: 'M_wa',
    unit: memberMoment,
    source: statics,
  }),
  solve(largest('moment_per_length'), {
    takes: { values: { list: 'struts.M_s' }, other: 'M_top' },
    gives: {
      largest: {
        dimension: 'moment_per_length',
        name: 'M_span',
        says: 'largest moment in a span or at the top strut',
        unit: lineMomentUnit,
      },
    },
    says: 'the place that bears most, down to the lowest strut',
  }),
  moment('M_wall', 'max(M_span, M_foot)', { says: 'largest moment in the wall', symbol: 'M_max' }),
  when({ given: 'pile_spacing' }, { yes: lagging }),
  when(
    { given: 'strut_capacity' },
    { yes: [check('struts_bear', 'N_max <= strut_capacity', { says: 'the struts bear their load', source: statics })] },
  ),
]
