import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, look, step, when } from '../words.ts'
import { flotationFactor } from './em-flotation-factor.ts'
import { openChecks, openForces } from './flotation-open.ts'
import { area, depth, force, volume, waterPressure } from './flotation-words.ts'

const geometry: readonly Step[] = [
  depth('z_roof', 'cover + topping', { says: 'depth of the top of the roof slab' }),
  depth('z_raft_top', 'z_roof + roof + clear', { says: 'depth of the top of the raft' }),
  depth('z_raft', 'z_raft_top + raft', { says: 'depth of its underside' }),
  area('A_box', 'plan_length * plan_width', 'plan of the box'),
  area('A_raft', '(plan_length + 2 * toe) * (plan_width + 2 * toe)', 'plan of the raft with its toe'),
  area('A_toe', 'A_raft - A_box', 'plan of the toe beyond the walls'),
]

const weight: Step = when(
  { given: 'box_weight' },
  {
    yes: [force('W_box', 'box_weight', { says: 'weight of the box, as given' })],
    no: [
      volume('V_roof', 'A_box * roof', 'concrete of the roof'),
      volume(
        'V_walls',
        '(A_box - (plan_length - 2 * wall) * (plan_width - 2 * wall)) * clear',
        'concrete of the outer walls',
      ),
      volume('V_raft', 'A_raft * raft', 'concrete of the raft'),
      force('W_box', 'gamma_c * (V_roof + V_walls + V_raft)', { says: 'weight of the box' }),
    ],
  },
)

const soilOver = (name: 'W_soil' | 'W_cover'): Step =>
  force(name, 'A_box * (gamma * h_moist + (gamma_sat - gamma_w) * (cover - h_moist))', {
    says: 'soil over the roof: moist above the water, submerged below',
  })

/** A topping without a weight of its own counts as room for water only, on the safe side. */
const soilAndTopping: readonly Step[] = [
  soilOver('W_soil'),
  force('W_top', 'A_box * (topping_weight * topping - gamma_w * min(max(z_roof - water_depth, 0 m), topping))', {
    says: 'topping on the roof, less what water lifts of it',
  }),
  force('W_cover', 'W_soil + W_top', { says: 'soil and topping over the roof' }),
]

const soil: readonly Step[] = [
  depth('h_moist', 'min(max(water_depth, 0 m), cover)', { says: 'cover above the water' }),
  when({ given: 'topping_weight' }, { yes: soilAndTopping, no: [soilOver('W_cover')] }),
  depth('h_toe', 'min(max(water_depth, 0 m), z_raft_top)', { says: 'soil over the toe above the water' }),
  force('W_toe', 'A_toe * (gamma * h_toe + (gamma_sat - gamma_w) * (z_raft_top - h_toe))', {
    says: 'upright prism of soil over the toe, moist and submerged',
  }),
]

/** Uplift, and the water that stands on the structure, with the water at one depth. */
const waterForces = (tag: 'fin' | 'build', water: string, when_: string): readonly Step[] => [
  waterPressure(`u_${tag}`, `gamma_w * max(z_raft - ${water}, 0 m)`, `water pressure under the raft, ${when_}`),
  force(`U_${tag}`, `u_${tag} * A_raft`, { says: 'uplift on the raft' }),
  force(`W_G_${tag}`, `gamma_w * (A_box * max(z_roof - ${water}, 0 m) + A_toe * max(z_raft_top - ${water}, 0 m))`, {
    says: 'water that stands on the roof and on the toe',
    symbol: `W_G_${tag}`,
  }),
  force(`U_net_${tag}`, `U_${tag} - W_G_${tag}`, { says: 'uplift less the water on top' }),
]

const factorOf = (tag: 'fin' | 'build', condition: string): Step =>
  look(`F_req_${tag}`, flotationFactor, {
    row: condition,
    says: tag === 'fin' ? 'required factor, finished' : 'required factor while building',
  })

const chosenFactor: Step = when(
  { given: 'factor' },
  {
    yes: [
      step('F_req_fin', 'factor', { says: 'required factor, finished' }),
      step('F_req_build', 'factor', { says: 'required factor while building' }),
    ],
    no: [
      step('F_req_fin', '0', { says: 'no factor is given' }),
      step('F_req_build', '0', { says: 'no factor is given' }),
    ],
  },
)

const upl = cite('en-1997-1', '2.4.7.4, Eq. 2.8')
const em = cite('em-1110-2-2100', 'Eq. 3-2')

/** Demand and resistance by partial factors: total weights against the whole uplift. */
const partialFactors: readonly Step[] = [
  force('demand_fin', 'gamma_dst * U_fin', { says: 'design uplift, finished', symbol: 'V_dst_fin', source: upl }),
  force('hold_fin', 'gamma_stb * (W_box + fixed_weight + W_cover + W_toe + W_G_fin) + side_friction', {
    says: 'design weight with soil and water on top, and friction',
    symbol: 'G_stb_fin',
    source: upl,
  }),
  force('demand_build', 'gamma_dst * U_build', {
    says: 'design uplift while building',
    symbol: 'V_dst_build',
    source: upl,
  }),
  force('hold_build', 'gamma_stb * (W_box + W_G_build)', {
    says: 'design weight of the box alone, with water on toe and roof',
    symbol: 'G_stb_build',
    source: upl,
  }),
  force('demand_open', 'gamma_dst * U_open', {
    says: 'design uplift without the roof, pumps stopped',
    symbol: 'V_dst_open',
    source: upl,
  }),
  force('hold_open', 'gamma_stb * (W_open + W_G_open)', {
    says: 'design weight of raft and walls, with the water on the toe',
    symbol: 'G_stb_open',
    source: upl,
  }),
  step('f_hold', 'gamma_stb / gamma_dst', { says: 'part of the weight that may meet uplift while building' }),
]

/** The same by one factor: submerged weights against the uplift less the water on top. */
const oneFactor: readonly Step[] = [
  force('demand_fin', 'F_req_fin * U_net_fin', {
    says: 'uplift times the required factor, finished',
    symbol: 'D_fin',
    source: em,
  }),
  force('hold_fin', 'W_box + fixed_weight + W_cover + W_toe + side_friction', {
    says: 'weight of box, fixed equipment and soil, and friction',
    symbol: 'H_fin',
    source: em,
  }),
  force('demand_build', 'F_req_build * U_net_build', {
    says: 'uplift times the required factor, while building',
    symbol: 'D_build',
    source: em,
  }),
  force('hold_build', 'W_box', {
    says: 'weight of the box alone: no fill, nobody and nothing in it',
    symbol: 'H_build',
    source: em,
  }),
  force('demand_open', 'F_req_build * U_net_open', {
    says: 'uplift times the required factor, without the roof, pumps stopped',
    symbol: 'D_open',
    source: em,
  }),
  force('hold_open', 'W_open', { says: 'weight of raft and walls alone', symbol: 'H_open', source: em }),
  step('f_hold', '1 / F_req_build', { says: 'part of the weight that may meet uplift while building' }),
]

const byMethod: Step = when(
  { choice: 'method', is: ['EN 1997-1 UPL'] },
  {
    yes: partialFactors,
    no: [
      when(
        { choice: 'method', is: ['EM 1110-2-2100'] },
        {
          yes: [factorOf('fin', 'condition_finished'), factorOf('build', 'condition_building')],
          no: [chosenFactor],
        },
      ),
      ...oneFactor,
    ],
  },
)

const safety = (tag: 'fin' | 'build', holding: string, says: string): Step =>
  when(
    { formula: `U_net_${tag} > 0 kN` },
    {
      says: 'there is uplift',
      yes: [
        step(`F_${tag}`, `(${holding}) / U_net_${tag}`, {
          says,
          source: em,
        }),
      ],
    },
  )

const heads: readonly Step[] = [
  depth('head_safe', 'f_hold * W_box / (gamma_w * A_raft)', {
    says: 'head under the raft that the box without fill just bears',
    symbol: 'h_safe',
  }),
  depth('z_safe', 'z_raft - head_safe', { says: 'depth to which the water must be held until the fill is placed' }),
]

/** Weights, uplift, factors and the checks of every stage. */
export const flotationSteps: readonly Step[] = [
  ...geometry,
  weight,
  ...soil,
  ...waterForces('fin', 'water_depth', 'highest water'),
  ...waterForces('build', 'water_building', 'while building'),
  ...openForces,
  byMethod,
  safety('fin', 'W_box + fixed_weight + W_cover + W_toe + side_friction', 'factor against flotation, finished'),
  safety('build', 'W_box', 'factor against flotation while building'),
  check('stays_down_finished', 'demand_fin <= hold_fin', {
    says: 'finished and empty, the box stays down at the highest water',
  }),
  check('stays_down_building', 'demand_build <= hold_build', {
    says: 'without fill, the box stays down at the water while building',
  }),
  ...heads,
  ...openChecks,
]
