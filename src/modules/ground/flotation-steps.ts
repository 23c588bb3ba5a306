import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { check, look, step, when } from '../words.ts'
import { flotationFactor } from './em-flotation-factor.ts'
import { areaUnit, forceUnit, lengthUnit, pressureUnit, volumeUnit } from './ground-units.ts'

const statics = cite('statics')
const depth = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: lengthUnit, source: statics })
const area = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: areaUnit, source: statics })
const volume = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: volumeUnit, source: statics })
const force = (name: string, formula: string, more: { says: string; symbol?: string; source?: Citation }): Step =>
  step(name, formula, { source: statics, ...more, unit: forceUnit })

const geometry: readonly Step[] = [
  depth('z_raft_top', 'cover + roof + clear', 'depth of the top of the raft'),
  depth('z_raft', 'z_raft_top + raft', 'depth of its underside'),
  area('A_box', 'plan_length * plan_width', 'plan of the box'),
  area('A_raft', '(plan_length + 2 * toe) * (plan_width + 2 * toe)', 'plan of the raft with its toe'),
  area('A_toe', 'A_raft - A_box', 'plan of the toe beyond the walls'),
]

const weight: Step = when(
  { given: 'box_weight' },
  {
    says: 'the weight of the box is given',
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

const soil: readonly Step[] = [
  depth('h_moist', 'min(max(water_depth, 0 m), cover)', 'cover above the water'),
  force('W_cover', 'A_box * (gamma * h_moist + (gamma_sat - gamma_w) * (cover - h_moist))', {
    says: 'soil over the roof: moist above the water, submerged below it',
  }),
  when(
    { formula: 'toe > 0 m' },
    {
      says: 'the raft has a toe with soil on it',
      yes: [
        depth('h_toe', 'min(max(water_depth, 0 m), z_raft_top)', 'soil over the toe above the water'),
        force('W_toe', 'A_toe * (gamma * h_toe + (gamma_sat - gamma_w) * (z_raft_top - h_toe))', {
          says: 'upright prism of soil over the toe, moist and submerged',
        }),
      ],
      no: [force('W_toe', '0 kN', { says: 'soil over a toe: there is none' })],
    },
  ),
]

/** Uplift, and the water that stands on the structure, with the water at one depth. */
const waterForces = (tag: 'fin' | 'build', water: string, when_: string): readonly Step[] => [
  step(`u_${tag}`, `gamma_w * max(z_raft - ${water}, 0 m)`, {
    says: `water pressure under the raft, ${when_}`,
    unit: pressureUnit,
    source: statics,
  }),
  force(`U_${tag}`, `u_${tag} * A_raft`, { says: 'uplift on the raft' }),
  force(`W_G_${tag}`, `gamma_w * (A_box * max(cover - ${water}, 0 m) + A_toe * max(z_raft_top - ${water}, 0 m))`, {
    says: 'water that stands on the roof and on the toe',
    symbol: `W_G${tag}`,
  }),
  force(`U_net_${tag}`, `U_${tag} - W_G_${tag}`, { says: 'uplift less the water on top', symbol: `U_net${tag}` }),
]

const friction: Step = when(
  { given: 'side_friction' },
  {
    says: 'friction on the walls',
    yes: [force('R_side', 'side_friction', { says: 'friction on the walls, as given' })],
    no: [force('R_side', '0 kN', { says: 'friction on the walls is left out' })],
  },
)

const factorOf = (tag: 'fin' | 'build', condition: string): Step =>
  look(`F_req_${tag}`, flotationFactor, {
    row: condition,
    says: tag === 'fin' ? 'required factor, finished' : 'required factor while building',
    symbol: `F_req${tag}`,
  })

const chosenFactor: Step = when(
  { given: 'factor' },
  {
    says: 'the factor is given',
    yes: [
      step('F_req_fin', 'factor', { says: 'required factor, finished', symbol: 'F_reqfin' }),
      step('F_req_build', 'factor', { says: 'required factor while building', symbol: 'F_reqbuild' }),
    ],
    no: [
      step('F_req_fin', '0', { says: 'no factor is given', symbol: 'F_reqfin' }),
      step('F_req_build', '0', { says: 'no factor is given', symbol: 'F_reqbuild' }),
    ],
  },
)

const upl = cite('en-1997-1', '2.4.7.4, Eq. 2.8')
const em = cite('em-1110-2-2100', 'Eq. 3-2')

/** Demand and resistance by partial factors: total weights against the whole uplift. */
const partialFactors: readonly Step[] = [
  force('demand_fin', 'gamma_dst * U_fin', { says: 'design uplift, finished', symbol: 'V_dstfin', source: upl }),
  force('hold_fin', 'gamma_stb * (W_box + fixed_weight + W_cover + W_toe + W_G_fin) + R_side', {
    says: 'design weight with the soil and the water in and over it, and friction',
    symbol: 'G_stbfin',
    source: upl,
  }),
  force('demand_build', 'gamma_dst * U_build', {
    says: 'design uplift while building',
    symbol: 'V_dstbuild',
    source: upl,
  }),
  force('hold_build', 'gamma_stb * (W_box + W_G_build)', {
    says: 'design weight of the box alone, with the water on its toe and roof',
    symbol: 'G_stbbuild',
    source: upl,
  }),
  step('f_hold', 'gamma_stb / gamma_dst', { says: 'part of the weight that may meet uplift while building' }),
]

/** The same by one factor: submerged weights against the uplift less the water on top. */
const oneFactor: readonly Step[] = [
  force('demand_fin', 'F_req_fin * U_net_fin', { says: 'uplift times the required factor, finished', source: em }),
  force('hold_fin', 'W_box + fixed_weight + W_cover + W_toe + R_side', {
    says: 'weight of box, fixed equipment and soil, and friction',
    source: em,
  }),
  force('demand_build', 'F_req_build * U_net_build', {
    says: 'uplift times the required factor, while building',
    source: em,
  }),
  force('hold_build', 'W_box', { says: 'weight of the box alone: no fill, nobody and nothing in it', source: em }),
  step('f_hold', '1 / F_req_build', { says: 'part of the weight that may meet uplift while building' }),
]

const byMethod: Step = when(
  { choice: 'method', is: ['EN 1997-1 UPL'] },
  {
    says: 'partial factors',
    yes: partialFactors,
    no: [
      when(
        { choice: 'method', is: ['EM 1110-2-2100'] },
        {
          says: 'factors by load condition',
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
          says: `${says}: submerged weight over uplift less the water on top`,
          source: em,
        }),
      ],
    },
  )

const heads: readonly Step[] = [
  depth(
    'head_safe',
    'f_hold * W_box / (gamma_w * A_raft)',
    'head under the raft that the box without fill just bears; water on a toe is left out',
  ),
  depth('z_safe', 'z_raft - head_safe', 'depth to which the water must be held until the fill is placed'),
]
const openHeads: Step = when(
  { given: 'box_weight' },
  {
    says: 'the weight of the box is given as one',
    yes: [],
    no: [
      depth(
        'head_open',
        'f_hold * gamma_c * (V_walls + V_raft) / (gamma_w * A_raft)',
        'the same before the roof is cast',
      ),
      depth('z_open', 'z_raft - head_open', 'depth to which the water must be held until the roof is cast'),
    ],
  },
)

/** Weights, uplift, factors and the two checks. */
export const flotationSteps: readonly Step[] = [
  ...geometry,
  weight,
  ...soil,
  ...waterForces('fin', 'water_depth', 'highest water'),
  ...waterForces('build', 'water_building', 'while building'),
  friction,
  byMethod,
  safety('fin', 'W_box + fixed_weight + W_cover + W_toe + R_side', 'factor against flotation, finished'),
  safety('build', 'W_box', 'factor against flotation while building'),
  check('stays_down_finished', 'demand_fin <= hold_fin', {
    says: 'finished and empty, at the highest water, the box stays down',
  }),
  check('stays_down_building', 'demand_build <= hold_build', {
    says: 'complete but without fill, at the water of the building stage, the box stays down',
  }),
  ...heads,
  openHeads,
]
