import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, length, limit, ratio, step, when } from '../words.ts'
import { albedoAt, energyAtBend } from './albedo-table.ts'
import { pipeStreamingCases } from './pipe-streaming-cases.ts'
import { thin } from './slab-inputs.ts'

const far = { SI: 'm', US: 'ft' }
const angles = cite('statics', 'solid angle')
const share = (formula: string) =>
  step('k_1', formula, { says: 'share of the field at the mouth, straight through', source: angles })

/** What a straight or offset round pipe through a wall lets through along its axis. */
export const pipeStreaming = defineModule({
  id: 'pipe-streaming',
  version: '1.1.0',
  title: 'Radiation through a pipe in the wall',
  asks: 'What share of the radiation at its mouth comes through a round pipe, straight or offset?',
  inputs: {
    diameter: length({ says: 'inner diameter of the pipe', symbol: 'd_p', unit: thin, above: '0 mm', most: '2 m' }),
    run: length({
      says: 'length of the pipe, or of its first leg',
      symbol: 'l_1',
      unit: far,
      above: '0 m',
      most: '50 m',
    }),
    field: choice({
      says: 'radiation at the mouth',
      words: {
        isotropic: 'equal from all directions of the half space: scattered radiation, open sky',
        cosine: 'as from a glowing surface: twice as much along the axis, the safe choice',
        emitters: 'fallout lying on the mouth itself',
      },
    }),
    margin: ratio({
      says: 'allowance for scatter off the wall of the pipe',
      note: 'From 3 to 20 radii deep scatter may be as much as the straight part at the rim of the exit',
      symbol: 'k_s',
      least: '2',
      most: '100',
      default: '2',
      source: cite('practice'),
    }),
    second_leg: length({
      says: 'second leg, square to the first, centre to centre',
      symbol: 'l_2',
      unit: far,
      above: '0 m',
      most: '50 m',
      optional: true,
    }),
    energy: energyAtBend,
    albedo: ratio({
      says: 'dose albedo for each steradian at the corner, where known',
      note: 'Counts only with a second leg. Left out, it is that of concrete at the energy',
      symbol: 'alpha_g',
      above: '0',
      most: '0.1',
      optional: true,
    }),
    required_factor: ratio({ says: 'required protection factor of this path', symbol: 'P_req', least: '1' }),
  },
  steps: [
    step('R_p', 'diameter / 2', { says: 'radius of the pipe', unit: thin }),
    step('q_p', '(R_p / run)^2', { says: 'radius over length, squared' }),
    when(
      { choice: 'field', is: ['isotropic'] },
      {
        yes: [share('1 - 1 / sqrt(1 + q_p)')],
        no: [
          when(
            { choice: 'field', is: ['cosine'] },
            { yes: [share('q_p / (1 + q_p)')], no: [share('log(1 + q_p) / 2')] },
          ),
        ],
      },
    ),
    when(
      { given: 'second_leg' },
      {
        yes: [
          step('A_c', 'pi * R_p^2 * sqrt(2)', {
            says: 'wall seen from both legs at the corner',
            unit: { SI: 'm^2', US: 'ft^2' },
          }),
          when(
            { given: 'albedo' },
            {
              yes: [step('alpha_c', 'albedo', { says: 'albedo at the corner, as given', symbol: 'alpha' })],
              no: [albedoAt('alpha_c', 'energy', { says: 'albedo at the corner', symbol: 'alpha' })],
            },
          ),
          step('k_2', 'alpha_c * A_c / second_leg^2', {
            says: 'share of the corner that turns into the second leg',
            source: cite('albedo-rule'),
          }),
          check('no_straight_line', 'second_leg >= diameter', {
            says: 'no straight line passes: the offset is a diameter or more',
            aspect: 'geometry',
            source: cite('practice'),
          }),
          step('K_p', 'margin * k_1 * k_2', { says: 'share at the exit, with the allowance' }),
        ],
        no: [step('K_p', 'margin * k_1', { says: 'share at the exit, with the allowance' })],
      },
    ),
    step('P', '1 / K_p', { says: 'protection factor of this path at the exit' }),
    check('protection', 'P >= required_factor', { says: 'the protection factor of the pipe is as required' }),
  ],
  results: ['P', 'K_p', 'k_1'],
  covers: ['opening-shielding'],
  drawing: ['diameter', 'run', 'second_leg'],
  limits: [
    limit('run >= 1.5 * diameter', {
      says: 'the pipe is at least three radii long',
      advice: 'A shorter one is an opening: treat it as such',
      otherwise: 'warn',
      on: 'run',
      source: angles,
    }),
    limit('K_p <= 1', {
      says: 'no more comes through than there is at the mouth',
      otherwise: 'refuse',
      on: 'run',
      source: angles,
    }),
  ],
  cautions: [
    'A pipe is usually less than the roof, but it is a beam: move its inner mouth away from beds.',
    'Cowl the outside against fallout that settles on the mouth. Gaps round a sleeve count as pipes.',
    'Straight shares are geometry; the allowance for scatter is a judgement, not a calculation of transport.',
    {
      says: 'The wall must shield beside the first leg as well as elsewhere: the offset may not thin it. The albedo rule is an estimate, from memory and within a third.',
      when: { given: 'second_leg' },
    },
  ],
  published: pipeStreamingCases,
  example: { diameter: '100 mm', run: '0.6 m', field: 'cosine', required_factor: '50' },
})
