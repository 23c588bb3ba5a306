import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { limit } from '../words.ts'
import { flotationCases } from './flotation-cases.ts'
import { flotationInputs } from './flotation-inputs.ts'
import { flotationSecond } from './flotation-second.ts'
import { flotationSketch } from './flotation-sketch.ts'
import { flotationSteps } from './flotation-steps.ts'
import { saturatedNoLighter } from './saturated-weight.ts'

/** Weight of the box and its fill against the uplift of the water, finished and while building. */
export const flotation = defineModule({
  id: 'flotation',
  version: '1.0.2',
  title: 'Flotation of the box',
  asks: 'Will the box float, finished and empty or while it is being built?',
  inputs: flotationInputs,
  steps: flotationSteps,
  results: [
    'F_fin',
    'F_build',
    'W_box',
    'U_fin',
    'U_net_fin',
    'hold_fin',
    'z_safe',
    'z_open',
    'W_open',
    'demand_open',
    'hold_open',
    'rise_open',
  ],
  covers: ['flotation'],
  limits: [
    saturatedNoLighter(),
    limit('2 * wall < min(plan_length, plan_width)', {
      says: 'the walls leave a room between them',
      otherwise: 'refuse',
      on: 'wall',
      source: cite('statics'),
    }),
    limit('F_req_fin >= 1', {
      says: 'the required factor is at least 1',
      advice: 'Give `factor` with the method `chosen factor`',
      otherwise: 'refuse',
      on: 'factor',
    }),
    limit('W_open > 0 kN', {
      says: 'the weight given for the box is more than that of its roof slab',
      otherwise: 'refuse',
      on: 'box_weight',
    }),
    {
      holds: { given: 'water_held' },
      when: { choice: 'open_box', is: ['water held'] },
      says: 'the depth at which the pumps hold the water is given',
      advice: 'Give `water_held`, or choose another way to keep the box without its roof down',
      otherwise: 'refuse',
      on: 'open_box',
    },
  ],
  cautions: [
    'The finished box is taken empty, with the soil and fixed weight entered here: enter the least that will surely stay. Live load, people and stores hold nothing down.',
    'Until the fill is placed the pumps have a second source of power, or the water is let in before the box floats.',
    'A raft without walls does not float: water that rises over it stands on it too. With its walls it is a boat.',
    'Water that fills a backfilled pit in clay stands at the rim of the pit, whatever the groundwater round about.',
    'Global flotation only: the raft also has to bear the uplift between the walls.',
    'The depths to which the water must be held count the concrete alone: no fill, no topping, no water on a toe.',
    {
      says: 'The partial factors of Table A.15 are recommended values, given here from memory of the standard: the national annex decides. All uplift is taken as permanent, at the highest water; on a variable part of it Table A.15 recommends 1.5.',
      when: { choice: 'method', is: ['EN 1997-1 UPL'] },
    },
    {
      says: 'Openings, or people on watch day and night, must let the water in faster than it rises outside. The flooded box is pumped out only while the water outside is held low, and the openings are closed for good only when weight has taken their place.',
      when: { choice: 'open_box', is: ['flooded on pump failure'] },
    },
    {
      says: 'Nothing but pumping keeps the box without its roof down: a standby pump on its own power starts by itself, somebody reads the water day and night, and what is done when both pumps fail is settled before the walls are cast.',
      when: { choice: 'open_box', is: ['water held'] },
    },
    {
      says: 'Friction on the walls is counted: it needs movement, may be lost by digging beside the box, and must be a design value.',
      when: { formula: 'side_friction > 0 kN' },
    },
  ],
  second: flotationSecond,
  sketch: flotationSketch,
  published: flotationCases,
  example: {
    method: 'EN 1997-1 UPL',
    plan_length: '8.6 m',
    plan_width: '5.2 m',
    toe: '0.3 m',
    cover: '1.2 m',
    roof: '350 mm',
    clear: '2.4 m',
    raft: '350 mm',
    wall: '300 mm',
    gamma_c: '24 kN/m^3',
    gamma: '17 kN/m^3',
    gamma_sat: '19.5 kN/m^3',
    water_depth: '1.0 m',
    water_building: '3.0 m',
    water_held: '4.8 m',
  },
})
