import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choiceLimit, limit } from '../words.ts'
import { passageBendsCases } from './passage-bends-cases.ts'
import { passageBendsInputs } from './passage-bends-inputs.ts'
import { drawPassageBends } from './passage-bends-sketch.ts'
import { passageBendsSteps } from './passage-bends-steps.ts'

/** What the legs, bends and doors of an entrance let through to a person at its end. */
export const passageBends = defineModule({
  id: 'passage-bends',
  version: '1.0.1',
  title: 'Radiation round the bends of a passage',
  asks: 'What share of the radiation in the open comes through the legs, bends and doors of an entrance?',
  inputs: passageBendsInputs,
  covers: ['entrance-shielding'],
  drawing: ['first_width', 'first_height', 'first_length'],
  schedule: {
    title: 'Legs of the passage after its bends',
    list: 'legs',
    columns: ['leg', 'turn', 'width', 'height', 'length'],
  },
  steps: passageBendsSteps,
  results: ['P', 'K_p', 'K_e', 'k_d'],
  limits: [
    limit('K_p <= 1', {
      says: 'no more comes through than there is in the open',
      otherwise: 'refuse',
      on: 'mouth',
      source: cite('statics', 'solid angle'),
    }),
    limit('n_all <= 10', {
      says: 'the doors are at most ten halvings thick',
      advice: 'So thick, what passes beside them at the frame decides',
      otherwise: 'warn',
      on: 'doors',
      source: cite('halving-data'),
    }),
    choiceLimit('rule', ['albedo'], {
      says: 'an albedo is given only for the rule that uses it',
      when: { given: 'albedo' },
      otherwise: 'warn',
      on: 'albedo',
      source: cite('albedo-rule'),
    }),
  ],
  cautions: [
    'Every rule here is an estimate, good to a factor of two at best, and not a calculation of transport: keep a margin of that size, or more where this path is a large share of the whole.',
    'Fallout that drifts or is carried in past a bend is a source behind it: keep it out, or sweep it out, before any factor counts.',
    'The inner corner must be as thick as the rule assumes: check the straight path through it as a slab of its own.',
    'Doors leak at the frame: lap the leaf over the wall. A door that stands open counts for nothing.',
    'A bend must not trap people: a stretcher must pass, and there is a second way out.',
    {
      says: 'The solid-angle rule is from memory of civil-defence manuals, with low confidence: confirm it in the book, or work the albedo rule beside it and take the worse.',
      when: { choice: 'rule', is: ['solid angle'] },
    },
    {
      says: 'Albedos are of concrete, computed, and up to a third above those of NCRP 151 from memory. They are for bare concrete walls: steel linings and earth differ.',
      when: { choice: 'rule', is: ['albedo'] },
    },
    {
      says: 'One tenth for a bend is a rule of thumb from memory, for passages of ordinary width: the first tenth may be too much to hope for where the passage is wide and its legs are short.',
      when: { choice: 'rule', is: ['flat factor'] },
    },
  ],
  sketch: drawPassageBends,
  published: passageBendsCases,
  example: {
    rule: 'albedo',
    mouth: '1',
    first_width: '0.9 m',
    first_height: '2.1 m',
    first_length: '3 m',
    legs: [
      { leg: 'passage', turn: 'right', width: '0.9 m', height: '2.1 m', length: '2.8 m' },
      { leg: 'air lock', turn: 'left', width: '0.9 m', height: '2.1 m', length: '2.2 m' },
    ],
    doors: [{ door: 'outer leaf', material: 'steel', thickness: '10 mm' }],
    spectrum: 'fallout',
    energy: '0.662 MeV',
    required_factor: '10000',
  },
})
