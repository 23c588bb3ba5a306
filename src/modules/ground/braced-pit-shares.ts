import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { carried, step, take } from '../words.ts'
import { type EnvelopeShape, load, loadTo, rampsAt } from './braced-pit-envelope.ts'
import { forceUnit, lengthUnit, lineLoadUnit } from './ground-units.ts'

const strutLoad = (name: string, formula: string, more: { says: string; symbol: string }): Step =>
  step(name, formula, { ...more, unit: forceUnit, source: cite('fhwa-gec-4', 'tributary area') })

/**
 * What a strut bears by its share of the height, half way to its neighbours, and the larger of that and its load by the hinges.
 * The envelope came from strut loads spread so, and what lies below the lowest strut does not relieve the one above it.
 */
export const shareOfSpan = (shape: EnvelopeShape): readonly Step[] => [
  step('z_half', '(z_up + z) / 2', {
    says: 'depth half way between both struts',
    symbol: 'z_half',
    unit: lengthUnit,
    source: cite('fhwa-gec-4', 'tributary area'),
  }),
  load('P_half', loadTo('z_half', shape, rampsAt('z_half')), { says: 'load down to there', symbol: 'P_half' }),
  carried('P_over', {
    next: 'P_half',
    first: '0 kN/m',
    says: 'load down to half way above the strut above',
    symbol: 'P_ov',
    unit: lineLoadUnit,
  }),
  strutLoad('N_share', '(P_half - P_over) * spacing', {
    says: 'load of the strut above, by its share of the height',
    symbol: 'N_sh',
  }),
  strutLoad('N_des', 'max(N_s_row, N_share)', {
    says: 'load that the strut above is made for, the larger of both',
    symbol: 'N_des',
  }),
]

/** The same for the lowest strut, whose share reaches down to formation. */
export const shareOfLowest: readonly Step[] = [
  take('P_last', {
    list: 'struts',
    of: 'P_half',
    from: 'last',
    says: 'load down to half way above the lowest strut',
    symbol: 'P_la',
    unit: lineLoadUnit,
  }),
  strutLoad('N_share_low', '(P_d - P_last) * spacing', {
    says: 'load of the lowest strut, by its share of the height',
    symbol: 'N_sh,n',
  }),
  strutLoad('N_des_low', 'max(N_low, N_share_low)', {
    says: 'load that the lowest strut is made for, the larger of both',
    symbol: 'N_des,n',
  }),
]
