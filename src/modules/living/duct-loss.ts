import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'
import { ductLossCases } from './duct-loss-cases.ts'
import { ductLossInputs } from './duct-loss-inputs.ts'
import { ductLossSecond } from './duct-loss-second.ts'
import { ductLossSteps } from './duct-loss-steps.ts'

/** Pressure lost on the way of the air, and what motor, battery and crank must do. */
export const ductLoss = defineModule({
  id: 'duct-loss',
  version: '1.0.0',
  title: 'Pressure loss of the air ducts and work of the blower',
  asks: 'What pressure must the blower give, and can the battery or people at the crank drive it?',
  inputs: ductLossInputs,
  steps: ductLossSteps,
  results: ['dp_all', 'p_room', 'P_air', 'P_el', 'I_el', 'P_hand', 'dp_ducts', 'dp_f'],
  covers: ['ducts'],
  drawing: ['flow', 'dp_all', 'valve'],
  schedule: { title: 'Ducts', list: 'ducts', columns: ['duct', 'bore', 'run', 'bends'] },
  limits: [
    limit('max(ducts.roughness) <= 0.05 * min(ducts.bore)', {
      says: 'the walls are smooth beside the bores, at most 0.05 of them',
      advice: 'Rougher ducts have no friction factor by this formula: ask the maker for the loss',
      otherwise: 'refuse',
      on: 'ducts',
      source: cite('colebrook'),
    }),
    limit('min(ducts.Re) >= 4000', {
      says: 'the flow is turbulent in every duct',
      advice: 'Between 2300 and 4000 the friction is uncertain; below, the losses of fittings are larger than tabled',
      otherwise: 'warn',
      on: 'flow',
      source: cite('cengel-fluid'),
    }),
    limit('flow <= filter_flow', {
      says: 'the filters are not driven past their rated flow',
      otherwise: 'warn',
      on: 'flow',
      source: cite('practice'),
    }),
    limit('dp_all <= 5 kPa', {
      says: 'the loss is small beside the pressure of the air',
      advice: 'Beyond 5 kPa the air is compressed noticeably',
      otherwise: 'warn',
      on: 'ducts',
      source: cite('cengel-fluid'),
    }),
    limit('p_room <= 250 Pa', {
      says: 'the overpressure is at most 250 Pa',
      advice: 'Doors become hard to open: see `air-lock-door`',
      otherwise: 'warn',
      on: 'valve',
      source: cite('swiss-twp'),
    }),
  ],
  cautions: [
    'A blower without power must leave a hand drive. Those who crank breathe two to three times the air of those at rest: count them so.',
    'Filters are counted dusty. Clean ones let more through: throttle, or the gas filter is driven past its rate.',
    'Valves shut against blast, smoke or fire stop all flow: see the closed-up time.',
    'A supply through several branches is not this: each way of the air from outside to outside is worked apart, and the greatest loss counts.',
    'Loss coefficients are of textbooks; the maker gives those of valves, grilles and hoods.',
  ],
  second: ductLossSecond,
  published: ductLossCases,
  example: {
    ducts: [
      {
        duct: 'intake',
        side: 'intake',
        bore: '150 mm',
        run: '14 m',
        roughness: '0.15 mm',
        entrance: 'hood',
        bend: 'segmented',
        bends: '4',
        outlet: 'open',
        other: '1.8',
      },
      {
        duct: 'exhaust',
        side: 'exhaust',
        bore: '125 mm',
        run: '9 m',
        roughness: '0.15 mm',
        entrance: 'sharp-edged',
        bend: 'segmented',
        bends: '3',
        outlet: 'open',
        other: '0',
      },
    ],
    flow: '36 L/s',
    filter_loss: '400 Pa',
    filter_flow: '40 L/s',
    valve: '60 Pa',
    overpressure: '60 Pa',
    blower_pressure: '700 Pa',
    blower_efficiency: '0.45',
    motor_efficiency: '0.7',
    voltage: '11 V',
    crank_efficiency: '0.85',
    crankers: '2 person',
  },
})
