import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { each, label, length, limit, list, quantity, step, unitWeight } from '../words.ts'
import { combinationInputs, combinationSteps } from './load-combination.ts'
import { raftReactionCases } from './raft-reaction-cases.ts'

const areaLoad = { SI: 'kN/m^2', US: 'psf' }
const forceUnit = { SI: 'kN', US: 'lbf' }
const lengthUnit = { SI: 'm', US: 'ft' }
const momentUnit = { SI: 'kN*m', US: 'lbf*ft' }

/** Upward pressure on a rigid raft under a central load: gross for the ground, net of the raft's own weight for its bending. */
export const raftReaction = defineModule({
  id: 'raft-reaction',
  version: '1.0.1',
  title: 'Ground pressure on the raft',
  asks: 'What upward pressure bends the raft, and what does the ground feel?',
  inputs: {
    loads: list('everything that stands on the raft, without the raft itself', {
      least: 1,
      most: 40,
      fields: {
        load: label({ says: 'what the load is', optional: true }),
        permanent: quantity('force', {
          says: 'permanent load, characteristic',
          symbol: 'G',
          unit: forceUnit,
          least: '0 kN',
        }),
        live: quantity('force', {
          says: 'live load, characteristic',
          symbol: 'Q',
          unit: forceUnit,
          least: '0 kN',
          default: '0 kN',
        }),
        x: length({
          says: 'distance from the centre of the raft along its length',
          symbol: 'x_r',
          unit: lengthUnit,
          default: '0 m',
        }),
        y: length({
          says: 'distance from the centre of the raft along its width',
          symbol: 'y_r',
          unit: lengthUnit,
          default: '0 m',
        }),
      },
    }),
    raft_length: length({ says: 'length of the raft', symbol: 'L_r', unit: lengthUnit, above: '0 m' }),
    raft_width: length({ says: 'width of the raft', symbol: 'B_r', unit: lengthUnit, above: '0 m' }),
    raft_thickness: length({
      says: 'thickness of the raft',
      symbol: 't_r',
      unit: lengthUnit,
      above: '0 m',
      usual: ['150 mm', '1.5 m'],
    }),
    concrete_weight: unitWeight({
      says: 'unit weight of reinforced concrete',
      symbol: 'gamma_c',
      unit: { SI: 'kN/m^3', US: 'pcf' },
      above: '0 kN/m^3',
      usual: ['22 kN/m^3', '27 kN/m^3'],
      default: '25 kN/m^3',
      source: cite('en-1991-1-1', 'Table A.1'),
    }),
    ...combinationInputs,
  },
  steps: [
    each('loads', [
      step('M_x', '(permanent + live) * x', {
        says: 'moment about the centre, along the length; nil on the centre line',
        unit: momentUnit,
      }),
      step('M_y', '(permanent + live) * y', {
        says: 'moment about the centre, along the width; nil on the centre line',
        unit: momentUnit,
      }),
    ]),
    step('A_r', 'raft_length * raft_width', { says: 'area of the raft', unit: { SI: 'm^2', US: 'ft^2' } }),
    step('W_r', 'A_r * raft_thickness * concrete_weight', { says: 'weight of the raft', unit: forceUnit }),
    step('G_all', 'sum(loads.permanent) + W_r', { says: 'permanent load, the raft included', unit: forceUnit }),
    step('Q_all', 'sum(loads.live)', { says: 'live load', unit: forceUnit }),
    step('e_x', 'sum(loads.M_x) / (G_all + Q_all)', { says: 'eccentricity along the length', unit: lengthUnit }),
    step('e_y', 'sum(loads.M_y) / (G_all + Q_all)', { says: 'eccentricity along the width', unit: lengthUnit }),
    step('k_e', '6 * abs(e_x) / raft_length + 6 * abs(e_y) / raft_width', {
      says: 'excess at the most loaded corner, as a share of the mean',
      source: cite('statics'),
    }),
    step('p_gross', '(G_all + Q_all) / A_r', { says: 'mean pressure on the ground', unit: areaLoad }),
    step('g_k', '(G_all - W_r) / A_r', {
      says: 'upward pressure from permanent load, net of the raft',
      unit: areaLoad,
      source: cite('statics'),
    }),
    step('q_k', 'Q_all / A_r', { says: 'upward pressure from live load', unit: areaLoad }),
    ...combinationSteps,
  ],
  results: ['w_u', 'w_k', 'p_gross', 'g_k', 'q_k', 'g_u', 'q_u', 'w_qp', 'W_r'],
  covers: ['actions'],
  limits: [
    limit('k_e <= 1', {
      says: 'the load stands within the kern of the raft',
      advice: 'Outside the kern the raft lifts on one side',
      otherwise: 'refuse',
      on: 'loads',
      source: cite('statics'),
    }),
    limit('k_e <= 0.1', {
      says: 'no corner carries more than 10 % above the mean',
      advice: 'The pressure is taken as uniform: move the loads, or design for a sloping pressure',
      otherwise: 'warn',
      on: 'loads',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'The pressure is taken as uniform: only for a raft that is rigid against its ground, with a central load. A thin or wide raft wants a raft on springs.',
    'Water pressure under the raft is not added: where the water is high, what the ground feels is the rest, and the raft must also be checked for the water alone with the box empty.',
    'The weight of the raft presses straight into the ground and bends nothing; it is in `p_gross`, not in `w_u`.',
  ],
  published: raftReactionCases,
  example: {
    loads: [
      { load: 'roof and cover', permanent: '1900 kN', live: '230 kN' },
      { load: 'walls', permanent: '820 kN' },
      { load: 'stores and people', permanent: '0 kN', live: '110 kN' },
    ],
    raft_length: '9.2 m',
    raft_width: '5.2 m',
    raft_thickness: '400 mm',
    combination: 'IS 456',
  },
})
