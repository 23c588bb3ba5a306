import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { carried, each, solve, step, take, when } from '../words.ts'
import {
  type EnvelopeShape,
  envelope,
  load,
  loadTo,
  moment,
  momentAt,
  strutRamps,
  wholeOf,
} from './braced-pit-envelope.ts'
import { bracedPitMembers } from './braced-pit-members.ts'
import { shareOfLowest, shareOfSpan } from './braced-pit-shares.ts'
import { forceUnit, lengthUnit, lineLoadUnit, lineMomentUnit } from './ground-units.ts'
import { noShearLevel } from './no-shear-level.ts'

const fromAbove = (
  name: string,
  next: string,
  more: { first: string; says: string; symbol: string; unit: typeof lengthUnit },
): Step => carried(name, { next, ...more })

const strutLoad = (name: string, formula: string, more: { says: string; symbol: string }): Step =>
  step(name, formula, { ...more, unit: forceUnit, source: cite('peck-1969') })

/** The hinge is at every strut but the top and the lowest; the lowest span bears what lies below it as well. */
const cut: Step = when(
  { formula: 'z < z_low' },
  {
    says: 'another strut lies below: a hinge at this one',
    yes: [
      load('P_c', 'P_z', { says: 'load down to this hinge', symbol: 'P_c' }),
      moment('M_c', 'M_z', { says: 'its moment about this strut', symbol: 'M_c' }),
    ],
    no: [
      load('P_c', 'P_d', { says: 'lowest strut: load down to formation', symbol: 'P_c' }),
      moment('M_c', 'M_d - P_d * (depth - z)', { says: 'its moment about this strut', symbol: 'M_c' }),
    ],
  },
)

const ramps = ({ rises, falls }: EnvelopeShape): readonly Step[] => [
  ...(rises ? [ramp('a_z', 'max(ramp - z, 0 m)', 'height below this strut over which pressure still rises')] : []),
  ...(falls ? [ramp('b_z', 'max(z - 3 * ramp, 0 m)', 'height above it over which pressure already falls')] : []),
]
const ramp = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: lengthUnit, source: cite('statics') })

/** Load and moment down to one strut, and the span from the strut above to it as a simple beam. */
const spanOf = (shape: EnvelopeShape): readonly Step[] => [
  fromAbove('z_up', 'z', { first: 'top_strut', says: 'depth of the strut above', symbol: 'z_up', unit: lengthUnit }),
  step('short', 'max(0.5 m - (z - z_up), 0 m)', {
    says: 'what its distance lacks to half a metre',
    symbol: 'l_x',
    unit: lengthUnit,
    source: cite('practice'),
  }),
  ...ramps(shape),
  load('P_z', loadTo('z', shape, strutRamps), { says: 'load down to this strut', symbol: 'P_z' }),
  moment('M_z', momentAt('z', shape, strutRamps), { says: 'its moment about this strut', symbol: 'M_z' }),
  fromAbove('P_up', 'P_c', {
    first: '0 kN/m',
    says: 'load that the spans above bear',
    symbol: 'P_u',
    unit: lineLoadUnit,
  }),
  fromAbove('M_up', 'M_c', {
    first: '0 kN*m/m',
    says: 'its moment about the hinge above',
    symbol: 'M_u',
    unit: lineMomentUnit,
  }),
  cut,
  load('R_u', '(M_c - M_up) / (z - z_up) - P_up', {
    says: 'reaction of this span at the strut above: moments about this one',
    symbol: 'R_u',
  }),
  load('R_l', 'P_c - P_up - R_u', { says: 'its reaction at this strut', symbol: 'R_l' }),
  fromAbove('R_over', 'R_l', {
    first: '0 kN/m',
    says: 'reaction of the span before at the strut above',
    symbol: 'R_o',
    unit: lineLoadUnit,
  }),
  load('R_s', 'R_over + R_u', { says: 'the strut above bears, for one length of wall', symbol: 'R_up' }),
  strutLoad('N_s_row', 'R_s * spacing', { says: 'load of the strut above, by the hinges', symbol: 'N_up' }),
  ...shareOfSpan(shape),
  solve(noShearLevel, {
    takes: { full: 'p_e', depth: 'depth', upper: 'z_up', lower: 'z', borne: 'P_up', reaction: 'R_u' },
    words: { ground: { choice: 'ground' } },
    gives: { level: { dimension: 'length', name: 'z_m', says: 'depth of no shear in this span', unit: lengthUnit } },
    says: 'where the moment of this span is largest',
  }),
  // At its ends a span has a hinge: a difference of great moments would print as little more than rounding there.
  when(
    { formula: 'z_m > z_up and z_m < z' },
    {
      says: 'the shear is nil within the span',
      yes: [
        moment('M_s', `(P_up + R_u) * (z_m - z_up) + M_up - ${momentAt('z_m', shape)}`, {
          says: 'moment in the wall there',
          symbol: 'M_s',
        }),
      ],
      no: [moment('M_s', '0 kN*m/m', { says: 'no moment at the hinge', symbol: 'M_s' })],
    },
  ),
]

function spans(shape: EnvelopeShape): readonly Step[] {
  const whole = wholeOf(shape)
  return [
    load('P_d', whole.load, { says: 'load of the whole envelope', symbol: 'P_d' }),
    moment('M_d', whole.moment, { says: 'its moment about formation', symbol: 'M_d' }),
    moment('M_top', momentAt('top_strut', shape), {
      says: 'moment in the wall at the top strut, from above',
      symbol: 'M_top',
    }),
    each('struts', spanOf(shape)),
  ]
}

const last = (name: string, of: string, more: { says: string; symbol: string; unit: typeof lengthUnit }): Step =>
  take(name, { list: 'struts', of, from: 'last', ...more })

/** Envelope, spans between hinges, struts and members. */
export const bracedPitSteps: readonly Step[] = [
  ...envelope,
  last('z_low', 'z', { says: 'depth of the lowest strut', symbol: 'z_n', unit: lengthUnit }),
  when(
    { choice: 'ground', is: ['sand'] },
    {
      yes: spans({ rises: false, falls: false }),
      no: [
        when(
          { choice: 'ground', is: ['soft to medium clay'] },
          { yes: spans({ rises: true, falls: false }), no: spans({ rises: true, falls: true }) },
        ),
      ],
    },
  ),
  last('R_low', 'R_l', { says: 'the lowest strut bears, for one length of wall', symbol: 'R_n', unit: lineLoadUnit }),
  strutLoad('N_low', 'R_low * spacing', { says: 'load of the lowest strut, by the hinges', symbol: 'N_n' }),
  ...shareOfLowest,
  last('M_low', 'M_z', {
    says: 'moment of the load above about the lowest strut',
    symbol: 'M_n',
    unit: lineMomentUnit,
  }),
  moment('M_foot', 'P_d * (depth - z_low) - M_d + M_low', {
    says: 'moment in the wall at the lowest strut, from below',
    symbol: 'M_f',
  }),
  ...bracedPitMembers,
]
