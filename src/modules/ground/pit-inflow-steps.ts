import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, step, when } from '../words.ts'
import { flowUnit, lengthUnit, pumpUnit } from './ground-units.ts'

const along = (name: string, formula: string, more: { says: string; symbol: string }): Step =>
  step(name, formula, { ...more, unit: lengthUnit, source: cite('statics') })

const radius = (formula: string, says: string): Step =>
  step('r_e', formula, { says, unit: lengthUnit, source: cite('dupuit-thiem', 'equivalent well') })

const circle: Step = when(
  { choice: 'equivalent', is: ['equal area'] },
  {
    yes: [radius('sqrt(ring_length * ring_width / pi)', 'radius of the circle of equal area')],
    no: [radius('(ring_length + ring_width) / pi', 'radius of the circle of equal perimeter')],
  },
)

/** Radius of influence for one permeability; a distance that is given stands for every one. */
const influence = (tag: '' | '_high', k: string, says: string): readonly Step[] => [
  step(`L_S${tag}`, `3000 * drawdown * sqrt(${k} / (1 m/s))`, {
    says: `reach of the lowering beyond the ring, ${says}`,
    symbol: tag === '' ? 'L_S' : 'L_S_max',
    unit: lengthUnit,
    source: cite('sichardt', 'empirical'),
  }),
  along(`R_0${tag}`, `L_S${tag} + r_e`, {
    says: 'radius of influence from the centre: reach and ring',
    symbol: tag === '' ? 'R_0' : 'R_0_max',
  }),
]

const given = (tag: '' | '_high'): Step =>
  along(`R_0${tag}`, 'reach', {
    says: 'radius of influence, as given',
    symbol: tag === '' ? 'R_0' : 'R_0_max',
  })

const radii: Step = when(
  { given: 'reach' },
  {
    yes: [given(''), given('_high')],
    no: [...influence('', 'k', 'best estimate'), ...influence('_high', 'k_high', 'highest permeability')],
  },
)

const flow = (tag: '' | '_high', formula: string, says: string): Step =>
  step(`Q${tag}`, `${formula} / log(R_0${tag} / r_e)`, {
    says,
    symbol: tag === '' ? 'Q' : 'Q_max',
    unit: flowUnit,
    source: cite('dupuit-thiem'),
  })

const flows = (formula: (k: string) => string): readonly Step[] => [
  flow('', formula('k'), 'steady flow to the pit, best estimate'),
  flow('_high', formula('k_high'), 'steady flow for the highest permeability'),
]

const unconfined: readonly Step[] = [
  along('H', 'aquifer_base - water_depth', { says: 'water above the base of the aquifer, far away', symbol: 'h_0' }),
  along('h_e', 'H - drawdown', { says: 'the same at the ring', symbol: 'h_e' }),
  ...flows(k => `pi * ${k} * (H^2 - h_e^2)`),
]

const confined: readonly Step[] = [
  when(
    { given: 'aquifer_top' },
    {
      yes: [
        along('D', 'aquifer_base - aquifer_top', { says: 'thickness of the aquifer', symbol: 'D_a' }),
        along('h_over', 'aquifer_top - (water_depth + drawdown)', {
          says: 'lowered head above the top of the aquifer',
          symbol: 'h_c',
        }),
      ],
      no: [along('D', '0 m', { says: 'the top of the aquifer is not given', symbol: 'D_a' })],
    },
  ),
  ...flows(k => `2 * pi * ${k} * D * drawdown`),
]

const pumps: readonly Step[] = [
  step('Q_pump', 'storage_factor * Q_high', {
    says: 'flow to pump in the first days',
    symbol: 'Q_p',
    unit: pumpUnit,
    source: cite('tm-5-818-5', '4-1'),
  }),
  along('head', 'depth + margin + outlet_head', {
    says: 'head of the pumps, from the lowered water',
    symbol: 'h_pump',
  }),
  step('P_pump', 'gamma_w * Q_pump * head / efficiency', {
    says: 'power that the pumps draw',
    unit: { SI: 'kW', US: 'hp' },
    source: cite('statics'),
  }),
  when(
    { given: 'pump_capacity' },
    {
      yes: [
        check('pumps_enough', 'pump_capacity >= Q_pump', {
          says: 'with the largest pump standing by the others bring the flow',
          source: cite('practice'),
        }),
      ],
    },
  ),
]

/** Lowering, equivalent well, flow and pumps. */
export const pitInflowSteps: readonly Step[] = [
  check('margin_enough', 'margin >= 0.5 m', {
    says: 'water is kept half a metre below formation or more',
    aspect: 'geometry',
    source: cite('practice', '0.5 m to 1.0 m'),
  }),
  along('drawdown', 'depth + margin - water_depth', { says: 'lowering of the water at the pit', symbol: 's_w' }),
  circle,
  radii,
  when({ choice: 'aquifer', is: ['confined'] }, { yes: confined, no: unconfined }),
  ...pumps,
]
