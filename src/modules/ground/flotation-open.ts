import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, when } from '../words.ts'
import { area, depth, force, waterPressure } from './flotation-words.ts'

/** How the box without its roof is kept from floating when the pumps stop. */
export const openBoxWords = {
  'holds by weight': 'raft and walls are heavy enough for the water that would stand there without pumps',
  'flooded on pump failure': 'it would float, so water is let in before it does',
  'water held': 'it would float, so the water is held down by pumps with a standby: give `water_held`',
} as const

const weightOfOpen: Step = when(
  { given: 'box_weight' },
  {
    yes: [
      force('W_open', 'W_box - gamma_c * A_box * roof', {
        says: 'weight of raft and walls: the weight given, less that of the roof slab',
      }),
    ],
    no: [force('W_open', 'gamma_c * (V_walls + V_raft)', { says: 'weight of raft and walls before the roof is cast' })],
  },
)

/** Weight and water of the box without its roof, at the water that stands there when the pumps stop. */
export const openForces: readonly Step[] = [
  weightOfOpen,
  depth('z_rim', 'z_roof + roof', { says: 'depth of the top of the walls' }),
  depth('water_open', 'max(water_building, z_rim)', {
    says: 'water against the open box: higher water runs in over the walls',
    symbol: 'z_wo',
  }),
  waterPressure('u_open', 'gamma_w * max(z_raft - water_open, 0 m)', 'water pressure under the raft, without the roof'),
  force('U_open', 'u_open * A_raft', { says: 'uplift on the raft' }),
  force('W_G_open', 'gamma_w * A_toe * max(z_raft_top - water_open, 0 m)', {
    says: 'water that stands on the toe',
    symbol: 'W_G_open',
  }),
  force('U_net_open', 'U_open - W_G_open', { says: 'uplift less the water on top' }),
]

/** Depth to which water must be held until the roof is cast. */
const heldDepth: readonly Step[] = [
  depth('head_open', 'f_hold * W_open / (gamma_w * A_raft)', {
    says: 'the same before the roof is cast',
    symbol: 'h_open',
  }),
  depth('z_open', 'z_raft - head_open', { says: 'depth to which the water must be held until the roof is cast' }),
]

const waterInside = (formula: string): Step =>
  depth('h_flood', formula, { says: 'depth of water in the box that holds it down', symbol: 'h_in' })

/** Water let in counts as weight by the measure of safety in use. */
const flooding: readonly Step[] = [
  area('A_in', '(plan_length - 2 * wall) * (plan_width - 2 * wall)', 'plan within the outer walls'),
  when(
    { choice: 'method', is: ['EN 1997-1 UPL'] },
    {
      yes: [waterInside('(demand_open - hold_open) / (gamma_stb * gamma_w * A_in)')],
      no: [waterInside('(demand_open - hold_open) / (gamma_w * A_in)')],
    },
  ),
  depth('h_outside', 'z_raft_top - water_open', {
    says: 'depth of the water outside above the top of the raft',
    symbol: 'h_out',
  }),
  check('flooding_holds', 'h_flood <= h_outside', {
    says: 'water let in to no more than the level outside holds the open box down',
    source: cite('practice'),
  }),
]

const floats: Step = when(
  { formula: 'demand_open > hold_open' },
  {
    says: 'with the pumps stopped the open box, without its roof, floats',
    yes: [when({ choice: 'open_box', is: ['flooded on pump failure'] }, { yes: flooding })],
  },
)

const held: Step = when(
  { given: 'water_held' },
  {
    yes: [
      check('held_low_enough', 'water_held >= z_open', {
        says: 'until the roof is cast, the water is held low enough',
        source: cite('practice'),
      }),
      depth('rise_open', 'water_held - z_open', {
        says: 'rise that the open box bears from where the water is held',
        symbol: 'r_open',
      }),
    ],
  },
)

/** What becomes of the box without its roof when the pumps stop, by the author's choice; and the water as it is held. */
export const openChecks: readonly Step[] = [
  ...heldDepth,
  when(
    { choice: 'open_box', is: ['holds by weight'] },
    {
      yes: [
        check('stays_down_open', 'demand_open <= hold_open', {
          says: 'without its roof, the box stays down at the water while building',
        }),
      ],
      no: [floats],
    },
  ),
  held,
]
