import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step, when } from '../words.ts'
import { moment } from './braced-pit-envelope.ts'
import { forceUnit, lineLoadUnit, lineMomentUnit } from './ground-units.ts'

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
  step('N_max', 'max(struts.N_des, N_des_low)', {
    says: 'load of the most loaded strut',
    unit: forceUnit,
    source: statics,
  }),
  step('R_max', 'N_max / spacing', {
    says: 'reaction of its level, for one length of wall',
    unit: lineLoadUnit,
    source: statics,
  }),
  step('M_waler', 'R_max * spacing^2 / 8', {
    says: 'moment in the waler there, as a simple beam',
    symbol: 'M_wa',
    unit: memberMoment,
    source: statics,
  }),
  step('M_span', 'max(struts.M_s, M_top)', {
    says: 'largest moment in a span or at the top strut',
    unit: lineMomentUnit,
    source: statics,
  }),
  moment('M_wall', 'max(M_span, M_foot)', { says: 'largest moment in the wall', symbol: 'M_max' }),
  when({ given: 'pile_spacing' }, { yes: lagging }),
  when(
    { given: 'strut_capacity' },
    { yes: [check('struts_bear', 'N_max <= strut_capacity', { says: 'the struts bear their load', source: statics })] },
  ),
]
