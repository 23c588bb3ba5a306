import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step, when } from '../words.ts'
import { duration, percent } from './living-units.ts'

const balance = cite('mass-balance')
const kelvins = { SI: 'K', US: 'delta_degF' }
const time = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: duration, source: balance })
const share = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: percent, source: balance })

/** The people who raised the carbon dioxide before the room was closed took up oxygen for it. */
const start = share(
  'o_0',
  'oxygen_outdoor - max(co2_start - co2_outdoor, 0) / quotient',
  'oxygen when it is closed, by its carbon dioxide then',
)

const sealed: readonly Step[] = [
  time('t_c', 'volume * (co2_limit - co2_start) / generation', 'time until carbon dioxide is at its limit'),
  share('c_w', 'co2_start + generation * wanted / volume', 'carbon dioxide at the end of the time wanted'),
  time('t_o', 'volume * (o_0 - oxygen_limit) * quotient / generation', 'time until oxygen is at its limit'),
  share('o_w', 'o_0 - generation * wanted / (quotient * volume)', 'oxygen at the end of the time wanted'),
]

/** The time to a limit with air coming in: by the logarithm where it is reached, the time wanted where it never is. */
const reached = (about: {
  name: string
  reaches: string
  says: string
  formula: string
  until: string
  never: string
}): Step =>
  when(
    { formula: about.reaches },
    {
      says: about.says,
      yes: [time(about.name, about.formula, about.until)],
      no: [time(about.name, 'wanted', about.never)],
    },
  )

const leaking: readonly Step[] = [
  time('t_a', 'volume / leakage', 'time in which the air is changed once'),
  share('c_s', 'co2_outdoor + generation / leakage', 'carbon dioxide at which the room would settle'),
  share('o_s', 'oxygen_outdoor - generation / (quotient * leakage)', 'oxygen at which the room would settle'),
  step('k_w', 'exp(-wanted / t_a)', { says: 'part of the way still to go after the time wanted', source: balance }),
  share('c_w', 'c_s + (co2_start - c_s) * k_w', 'carbon dioxide at the end of the time wanted'),
  share('o_w', 'o_s + (o_0 - o_s) * k_w', 'oxygen at the end of the time wanted'),
  reached({
    name: 't_c',
    reaches: 'c_s > co2_limit',
    says: 'the room would settle above the limit of carbon dioxide',
    formula: 't_a * log((c_s - co2_start) / (c_s - co2_limit))',
    until: 'time until carbon dioxide is at its limit',
    never: 'never at its limit: the time wanted stands for it',
  }),
  reached({
    name: 't_o',
    reaches: 'o_s < oxygen_limit',
    says: 'the room would settle below the limit of oxygen',
    formula: 't_a * log((o_0 - o_s) / (oxygen_limit - o_s))',
    until: 'time until oxygen is at its limit',
    never: 'never at its limit: the time wanted stands for it',
  }),
]

const half = cite('carslaw-jaeger', '2.9, constant flux into a half space')

/** The walls take up all heat: an even flux into a half space of concrete, and the air a film above its face. */
const heat: readonly Step[] = [
  step('q_w', 'gain / area', { says: 'heat into each area of wall', unit: { SI: 'W/m^2', US: 'Btu/(hr*ft^2)' } }),
  step('dT_f', 'q_w / film', { says: 'air above the face of the wall', symbol: 'Delta_T_f', unit: kelvins }),
  step('dT_s', '2 * q_w / conductivity * sqrt(diffusivity * wanted / pi)', {
    says: 'rise of the face of the wall after the time wanted',
    symbol: 'Delta_T_s',
    unit: kelvins,
    source: half,
  }),
  step('theta_w', 'start_temperature + dT_f + dT_s', {
    says: 'air at the end of the time wanted',
    unit: { SI: 'degC', US: 'degF' },
  }),
  step('dT_lim', 'max(temperature_limit - start_temperature - dT_f, 0 K)', {
    says: 'rise of the face that is allowed',
    symbol: 'Delta_T_r',
    unit: kelvins,
  }),
  step('t_h', 'pi / diffusivity * (conductivity * dT_lim / (2 * q_w))^2', {
    says: 'time until the air is at its limit of temperature',
    unit: duration,
    source: half,
  }),
]

/** Times to the limits of carbon dioxide, oxygen and heat, and the state after the time wanted. */
export const closedUpSteps: readonly Step[] = [
  start,
  when({ formula: 'leakage <= 0 m^3/hr' }, { says: 'no air comes in: the room is sealed', yes: sealed, no: leaking }),
  ...heat,
  step('t_closed', 'min(t_c, t_o, t_h)', { says: 'time until the first limit', symbol: 't_1', unit: duration }),
  check('carbon_dioxide', 'c_w <= co2_limit', { says: 'carbon dioxide keeps its limit for the time wanted' }),
  check('oxygen', 'o_0 - o_w <= o_0 - oxygen_limit', {
    says: 'oxygen falls no further than to its limit in the time wanted',
  }),
  check('warmth', 't_h >= wanted', { says: 'the air keeps its limit of temperature for the time wanted' }),
]
