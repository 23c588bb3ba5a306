import { defineModule, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choiceLimit, each, limit, look, step, when } from '../words.ts'
import { flowRate, lengths, speeds } from './living-units.ts'
import { airExhausts, dilutionFactor, separationFeet, separationMetric } from './separation-tables.ts'
import { ventSeparationCases } from './vent-separation-cases.ts'
import { ventSeparationInputs } from './vent-separation-inputs.ts'
import { drawVentSeparation } from './vent-separation-sketch.ts'

const practice = cite('practice')
const least = { row: 'kind', says: 'least distance by the published table', unit: lengths } as const

const distances: readonly Step[] = [
  when(
    { choice: 'column', is: ['metric'] },
    { yes: [look('L_min', separationMetric, least)], no: [look('L_min', separationFeet, least)] },
  ),
  step('L_s', 'sqrt(apart^2 + (mouth - intake_height)^2)', {
    says: 'distance from mouth to mouth',
    unit: lengths,
    source: cite('statics'),
  }),
  check('far_enough', 'L_s >= L_min', { says: 'the source is far enough from the intake', aspect: 'geometry' }),
  when(
    { choice: 'kind', is: ['soil vent above'] },
    {
      yes: [
        check('vent_above', 'mouth >= intake_height + L_min', {
          says: 'the vent ends that much above the intake',
          aspect: 'geometry',
          source: cite('ashrae-62', 'Table 5.5.1'),
        }),
      ],
    },
  ),
]

const leaves = (formula: string, says: string): Step => step('Q_x', formula, { says, unit: flowRate, source: practice })

/** Of an exhaust of air: how far it is thinned. Of anything else: that no air of rooms leaves there. */
const dilution: Step = when(
  { choice: 'kind', is: airExhausts },
  {
    yes: [
      when(
        { given: 'exhaust_flow' },
        {
          yes: [leaves('exhaust_flow', 'air that leaves there')],
          no: [leaves('intake_flow', 'air that leaves there: all that is drawn in')],
        },
      ),
      look('k_d', dilutionFactor, { row: 'kind', says: 'dilution wanted' }),
      step('L_dil', 'max((0.04 m) * sqrt(Q_x / (L/s)) * (sqrt(k_d) - exhaust_speed / (2 m/s)), 0 m)', {
        says: 'distance at which the exhaust is thinned so far',
        symbol: 'L_d',
        unit: lengths,
        source: cite('ashrae-62', 'separation by dilution, from memory'),
      }),
      check('diluted', 'L_s >= L_dil', { says: 'the exhaust is thinned before it reaches the intake' }),
    ],
    no: [leaves('0 m^3/s', 'air of rooms that leaves there')],
  },
)

/** Whether intake and exhaust stand apart, high enough and the right way round. */
export const ventSeparation = defineModule({
  id: 'vent-separation',
  version: '2.0.0',
  title: 'Intake and exhaust apart',
  asks: 'Does the intake stand far enough from exhausts and other sources, above snow and water, and draw gently?',
  inputs: ventSeparationInputs,
  steps: [
    each('sources', [...distances, dilution]),
    step('Q_all', 'sum(sources.Q_x)', { says: 'air that leaves by all exhausts', symbol: 'Q_a', unit: flowRate }),
    step('L_x', 'min(sources.L_s)', { says: 'distance of the nearest of them', unit: lengths }),
    step('z_clear', 'intake_height - snow', {
      says: 'mouth of the intake above the snow',
      symbol: 'z_k',
      unit: lengths,
    }),
    check('above_snow', 'z_clear >= 0.30 m', {
      says: 'the intake stands clear of ground and snow',
      aspect: 'geometry',
      source: cite('ashrae-62', 'Table 5.5.1, surface directly below'),
    }),
    check('above_water', 'intake_height >= flood + 0.30 m', {
      says: 'the intake stands above the water',
      aspect: 'geometry',
      source: practice,
    }),
    step('v_i', 'intake_flow / intake_area', { says: 'speed in the mouth of the intake', unit: speeds }),
    check('gentle', 'v_i <= 1.5 m/s', {
      says: 'the intake draws gently and leaves fallout to settle',
      source: practice,
    }),
  ],
  results: ['L_x', 'z_clear', 'v_i'],
  covers: ['vent-places'],
  drawing: ['intake_height', 'L_x', 'intake_area'],
  schedule: { title: 'Distances from the air intake', list: 'sources', columns: ['source', 'apart', 'mouth', 'L_min'] },
  limits: [
    limit('Q_all > 0 m^3/s', {
      says: 'an exhaust of air is among the rows',
      advice:
        'Give the exhaust of the shelter a row, of class 3 or 4: without it nothing says that intake and exhaust are apart',
      otherwise: 'refuse',
      on: 'sources',
      source: practice,
    }),
    choiceLimit('wind', ['intake'], {
      says: 'the intake stands upwind of the exhausts',
      advice: 'Change the two pipes over, or stand them across the wind',
      otherwise: 'warn',
      on: 'wind',
      source: practice,
    }),
    limit('Q_all >= 0.5 * intake_flow', {
      says: 'half of the air that is drawn in leaves by exhausts among the rows',
      advice: 'The rest leaks: find out where, and give that opening a row',
      otherwise: 'warn',
      on: 'sources',
      source: practice,
    }),
    limit('intake_height <= 2 m', {
      says: 'the intake can be reached from the ground to be cleaned',
      otherwise: 'warn',
      on: 'intake_height',
      source: practice,
    }),
    limit('max(sources.exhaust_speed) <= 5 m/s', {
      says: 'the speed credited to the exhaust is moderate',
      advice: 'The estimate is for mouths of buildings, not for jets',
      otherwise: 'warn',
      on: 'sources',
      source: practice,
    }),
  ],
  cautions: [
    'Carbon monoxide kills through an intake beside a flue: engine and stove exhausts stand downwind, beyond the doubled distance, whatever the dilution says.',
    'Mark each pipe, inside and out: intake and exhaust must not be changed over when filters or hoses are put back.',
    'Both mouths are turned down, screened and roofed. Fallout settles on them: filters are reached without touching the dust, and are not held in the shielded face of the living room.',
    'One block is about one intake: of a second one, or an exit through which air may be drawn, make a second block.',
    'Wind in a hollow or beside a wall turns round: the dilution is an estimate for open ground.',
  ],
  sketch: drawVentSeparation,
  published: ventSeparationCases,
  example: {
    column: 'metric',
    intake_height: '1.2 m',
    snow: '0.5 m',
    flood: '0.2 m',
    wind: 'intake',
    sources: [
      { source: 'generator', kind: 'engine exhaust', apart: '22 m', mouth: '2 m' },
      { source: 'exhaust', kind: 'exhaust class 3', apart: '9 m', mouth: '1.5 m' },
      { source: 'closet', kind: 'soil vent above', apart: '5 m', mouth: '2.5 m' },
      { source: 'track', kind: 'driveway', apart: '14 m', mouth: '0 m' },
    ],
    intake_flow: '36 L/s',
    intake_area: '0.04 m^2',
  },
})
