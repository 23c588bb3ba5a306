import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { solve, step } from '../words.ts'
import { boxShape } from './box-shape.ts'
import { heatingSteps } from './heating-steps.ts'
import { areas, lengths, thermometer } from './living-units.ts'
import { heatOfAir, heatOfPeople, lossUnit, yearlyWave } from './room-heat.ts'

const film = { SI: 'W/(m^2*K)', US: 'Btu/(hr*ft^2*delta_degF)' }
const unsteady = cite('incropera', 'Table 5.2, outside of a body, from memory')

const ground: readonly Step[] = [
  ...yearlyWave('cover'),
  step('theta_gc', 'ground_mean - ground_swing * k_z', {
    says: 'coldest that the ground at the roof becomes in the year',
    unit: thermometer,
    source: cite('kusuda'),
  }),
]

const faces: readonly Step[] = [
  step('A_b', '2 * (width * box_length + width * height + box_length * height)', {
    says: 'faces of the box outside, with its ends',
    unit: areas,
  }),
  step('b_in', 'width - 2 * wall', { says: 'width of the room', unit: lengths }),
  step('l_in', 'box_length - 2 * wall', { says: 'length of the room', unit: lengths }),
  step('h_in', 'height - 2 * wall', { says: 'height of the room', unit: lengths }),
  step('A_w', '2 * (b_in * l_in + b_in * h_in + l_in * h_in)', {
    says: 'inner faces of walls, roof and floor',
    unit: areas,
  }),
  solve(boxShape, {
    takes: { width: 'width', long: 'box_length', height: 'height', cover: 'cover' },
    gives: {
      shape: { dimension: 'length', name: 'S_b', says: 'shape factor of the whole box', unit: lengths },
    },
    says: 'conduction from the box through the ground to its surface',
    source: cite('incropera', 'conduction shape factors'),
  }),
]

/** What a face takes after a time: concrete or soil, whichever takes more. */
const takes = (name: string, time: string, says: string): Step =>
  step(
    name,
    `max(soil_conductivity / sqrt(diffusivity * ${time}), concrete_conductivity / sqrt(concrete_diffusivity * ${time}))`,
    { says, unit: film, source: cite('carslaw-jaeger') },
  )
const walls = (name: string, taken: string, says: string): Step =>
  step(name, `1 / (1 / (film * A_w) + 1 / (U_c + ${taken}))`, { says, unit: lossUnit, source: unsteady })

const losses: readonly Step[] = [
  heatOfAir,
  step('U_c', '1 / (wall / (concrete_conductivity * A_b) + 1 / (soil_conductivity * S_b))', {
    says: 'in the end, through concrete and ground to the surface',
    unit: lossUnit,
    source: cite('incropera'),
  }),
  takes('h_1', 'warm_up', 'scale of what concrete and soil still take when it is warm'),
  walls('U_w', 'sqrt(pi) / 2 * h_1 * A_w', 'to the walls for each degree then, the heat having been even'),
  takes('h_2', 'days', 'scale of what concrete and soil still take at the end'),
  walls('U_z', 'sqrt(pi) / 2 * h_2 * A_w', 'to the walls at the end, the heat having been even'),
  walls('U_k', 'h_2 * A_w / sqrt(pi)', 'to the walls at the end, the room having been kept warm'),
]

/** Gains, ground and losses; then the room without heating, the heating, and the moisture against the walls. */
export const heatingLoadSteps: readonly Step[] = [
  step('theta_r', '20', { says: 'people are read at the coldest column of the tables, in °C', symbol: 'theta_k' }),
  ...heatOfPeople,
  ...ground,
  ...faces,
  ...losses,
  ...heatingSteps,
]
