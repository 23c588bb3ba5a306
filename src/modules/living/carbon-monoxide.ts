import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit, solve } from '../words.ts'
import { carbonMonoxideCases } from './carbon-monoxide-cases.ts'
import { carbonMonoxideInputs } from './carbon-monoxide-inputs.ts'
import { drawCarbonMonoxide } from './carbon-monoxide-sketch.ts'
import { carbonMonoxideSteps } from './carbon-monoxide-steps.ts'
import { gasStepping } from './gas-stepping.ts'

/** Carbon monoxide from what burns inside or leaks in, against published limits, and whether people are out in time. */
export const carbonMonoxide = defineModule({
  id: 'carbon-monoxide',
  version: '1.0.0',
  title: 'Carbon monoxide inside',
  asks: 'Where does the carbon monoxide of what burns inside or leaks in go, and are people out before it is dangerous?',
  inputs: carbonMonoxideInputs,
  steps: carbonMonoxideSteps,
  results: ['chi_s', 'chi_t', 't_danger', 'G_co', 't_x'],
  covers: ['carbon-monoxide'],
  drawing: ['supply'],
  limits: [
    limit('burning <= t_lim', {
      says: 'it is breathed no longer than the limit is for',
      advice:
        'Take the limit of a longer time. Beyond a day there is none: a room that has settled by then stays as it is at 24 hours',
      otherwise: 'warn',
      on: 'exposure',
      source: cite('who-air'),
    }),
    limit('sum(sources.gas) <= supply', {
      says: 'no more gas enters than fresh air',
      advice: 'Oxygen falls too, and the flame gives off more: nobody can stay',
      otherwise: 'warn',
      on: 'supply',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'Carbon monoxide kills without smell or warning. Nothing that is checked here makes it right to burn anything in a shelter.',
    'A flame that is short of air, out of adjustment or chilled gives off ten times what its maker says.',
    'The gas brings carbon dioxide too, and the flame takes oxygen: neither is in these lines. Add them to those of people.',
    'The room is taken as well mixed: beside the source there is more, and an alarm far from it sounds later.',
    'The alarm is one that has been tested, is within its life and has power: two, of two kinds of supply.',
    'Children, the unborn, the sick and people at work are harmed sooner. The limits of OSHA and NIOSH are for healthy people at work.',
  ],
  second: {
    title: 'The gas step by step',
    says: 'The same room stepped through the time from its rate of change. It finds a slip in the closed form, not in what the sources give off.',
    steps: [
      solve(gasStepping, {
        takes: { volume: 'volume', makes: 'G_co', air: 'supply', outdoors: 'outdoor', time: 'burning' },
        gives: {
          share: {
            dimension: 'ratio',
            name: 'chi_step',
            says: 'carbon monoxide at the end',
            unit: { SI: 'ppm', US: 'ppm' },
          },
        },
        says: 'the room stepped through the time',
        source: cite('mass-balance'),
      }),
    ],
    compare: [{ first: 'chi_t', second: 'chi_step', band: 0.002, says: 'small steps follow the closed form' }],
  },
  sketch: drawCarbonMonoxide,
  published: carbonMonoxideCases,
  example: {
    volume: '60 m^3',
    supply: '130 m^3/hr',
    sources: [{ source: 'flue of the stove, a seam open', gas: '0.3 m^3/hr', monoxide: '800 ppm' }],
    burning: '24 hr',
    exposure: 'WHO 24 h',
    leaving: '15 min',
  },
})
