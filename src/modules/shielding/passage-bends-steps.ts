import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { carried, check, each, look, step, take, when } from '../words.ts'
import { albedoAt } from './albedo-table.ts'
import { halvingThickness } from './halving-tables.ts'
import { far } from './passage-bends-inputs.ts'
import { thin } from './slab-inputs.ts'

const angles = cite('statics', 'solid angle of a rectangle on its axis')
const manuals = cite('solid-angle-rule')

/** Solid angle of a leg's section seen from its far end, and its share of a half space. */
const seen = (of: { at: string; b: string; h: string; l: string }): readonly Step[] => {
  const { at, b, h, l } = of
  return [
    step(`Omega_${at}`, `4 * atan2(${b} * ${h}, 2 * ${l} * sqrt(4 * ${l}^2 + ${b}^2 + ${h}^2))`, {
      says: 'solid angle of the leg seen from its end, in steradians',
      source: angles,
    }),
    step(`omega_${at}`, `Omega_${at} / (2 * pi)`, { says: 'its share of a half space', source: angles }),
  ]
}

const firstLeg: readonly Step[] = [
  ...seen({ at: 'f', b: 'first_width', h: 'first_height', l: 'first_length' }),
  step('k_f', 'omega_f', { says: 'share of the mouth that reaches the first bend', symbol: 'k_0', source: angles }),
]

const bySolidAngle: readonly Step[] = [
  ...seen({ at: 'l', b: 'width', h: 'height', l: 'length' }),
  carried('c_b', { first: '0.1', next: 'c_n', says: 'factor of the bend before this leg' }),
  step('c_n', '0.5', { says: 'factor of a further bend', source: manuals }),
  step('k_l', 'c_b * omega_l', { says: 'share that this bend and leg let through', source: manuals }),
]

const byAlbedo: readonly Step[] = [
  step('A_c', 'max(width, b_before) * max(height, h_before)', {
    says: 'wall at the corner seen from both legs, the larger section',
    unit: { SI: 'm^2', US: 'ft^2' },
    source: cite('albedo-rule'),
  }),
  carried('alpha_b', {
    first: 'alpha_1',
    next: 'alpha_n',
    says: 'albedo at the bend before this leg',
    symbol: 'alpha',
  }),
  step('alpha_n', 'alpha_2', { says: 'albedo at a further bend' }),
  step('k_l', 'alpha_b * A_c / length^2', {
    says: 'share that this bend and leg let through',
    source: cite('albedo-rule'),
  }),
]

const byFlatFactor: readonly Step[] = [
  step('k_l', '0.1', { says: 'share that this bend lets through', source: cite('bend-factor') }),
]

const albedos: readonly Step[] = [
  when(
    { given: 'albedo' },
    {
      yes: [step('alpha_1', 'albedo', { says: 'albedo at the first bend, as given', symbol: 'alpha_f' })],
      no: [albedoAt('alpha_1', 'energy', { says: 'albedo at the first bend', symbol: 'alpha_f' })],
    },
  ),
  step('E_later', '0.25 MeV', {
    says: 'energy of photons that have been scattered once',
    symbol: 'E_2',
    unit: { SI: 'MeV', US: 'MeV' },
    source: cite('albedo-concrete'),
  }),
  albedoAt('alpha_2', 'E_later', { says: 'albedo at further bends', symbol: 'alpha_s' }),
]

const doors: readonly Step[] = [
  each('doors', [
    look('x_half', halvingThickness, { row: 'material', column: 'spectrum', says: 'halving thickness', unit: thin }),
    step('n_d', 'thickness / x_half', { says: 'halvings in this layer', symbol: 'n_l' }),
  ]),
  step('n_all', 'sum(doors.n_d)', { says: 'halvings in all doors' }),
  step('k_d', '2^(-n_all)', { says: 'share that all doors let through', source: cite('halving-data') }),
]

/** From the mouth through legs, bends and doors to the protection factor of the passage. */
export const passageBendsSteps: readonly Step[] = [
  when(
    { choice: 'rule', is: ['flat factor'] },
    {
      yes: [step('k_f', '1', { says: 'the first leg: not counted by this rule', symbol: 'k_0' })],
      no: firstLeg,
    },
  ),
  when({ choice: 'rule', is: ['albedo'] }, { yes: albedos }),
  each('legs', [
    carried('b_before', {
      first: 'first_width',
      next: 'width',
      says: 'width before the bend',
      symbol: 'b_b',
      unit: far,
    }),
    carried('h_before', {
      first: 'first_height',
      next: 'height',
      says: 'height before the bend',
      symbol: 'h_b',
      unit: far,
    }),
    check('is_leg', 'length >= max(width, b_before)', {
      says: 'the leg is no shorter than the passage is wide at its bend',
      aspect: 'geometry',
      source: cite('practice'),
    }),
    when(
      { choice: 'rule', is: ['solid angle'] },
      {
        yes: bySolidAngle,
        no: [when({ choice: 'rule', is: ['albedo'] }, { yes: byAlbedo, no: byFlatFactor })],
      },
    ),
    carried('K_before', { first: 'k_f', next: 'K_l', says: 'share that reaches this bend', symbol: 'K_b' }),
    step('K_l', 'K_before * k_l', { says: 'share at the end of this leg' }),
  ]),
  take('K_e', { list: 'legs', of: 'K_l', from: 'last', says: 'share that legs and bends let through' }),
  ...doors,
  step('K_p', 'mouth * K_e * k_d', { says: 'share of the open dose rate at the end of the passage' }),
  step('P', '1 / K_p', { says: 'protection factor of this path' }),
  check('protection', 'P >= required_factor', { says: 'the protection factor of the passage is as required' }),
]
