import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { choiceLimit, limit } from '../words.ts'
import { airLockDoorCases } from './air-lock-door-cases.ts'
import { airLockDoorInputs } from './air-lock-door-inputs.ts'
import { airLockDoorSecond } from './air-lock-door-second.ts'
import { airLockDoorSteps } from './air-lock-door-steps.ts'

/** Leaf of an air-lock door under an even pressure, the force to open it and its leak. */
export const airLockDoor = defineModule({
  id: 'air-lock-door',
  version: '1.0.0',
  title: 'Door of the air lock',
  asks: 'Is the leaf thick enough for the pressure, can a person open it, and how much does it leak?',
  inputs: airLockDoorInputs,
  steps: airLockDoorSteps,
  results: ['t_req', 'w_d', 'F_open', 'dp_max', 'Q_leak'],
  covers: ['doors'],
  drawing: ['width', 'height', 'thickness'],
  schedule: { title: 'Door', lines: ['width', 'height', 'thickness', 'design_pressure', 'F_open'] },
  limits: [
    limit('handle < 0.5 * width', {
      says: 'the handle is on the side of the latch',
      otherwise: 'refuse',
      on: 'handle',
      source: cite('ibc'),
    }),
    limit('closer < force_limit', {
      says: 'the closer alone leaves force to open the door',
      otherwise: 'refuse',
      on: 'closer',
      source: cite('ibc'),
    }),
    limit('thickness <= 0.1 * b_d', {
      says: 'the leaf is a thin plate, at most a tenth of its short side',
      advice: 'A thick leaf bends in shear as well: give a design of its own',
      otherwise: 'warn',
      on: 'thickness',
      source: cite('roark'),
    }),
    limit('w_d <= 0.5 * thickness', {
      says: 'the leaf bends by less than half its thickness',
      advice: 'Beyond it the plate also stretches and the formula no longer holds: it is on the safe side',
      otherwise: 'warn',
      on: 'thickness',
      source: cite('roark'),
    }),
    choiceLimit('opens', ['against the pressure'], {
      says: 'the pressure presses the leaf into its frame',
      advice:
        'A leaf that opens with the pressure hangs on latch and hinges, and flies open: they must bear the whole pressure',
      otherwise: 'warn',
      on: 'opens',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'Never put the only way out behind a door that pressure can hold shut: fit a valve in the leaf or wall that equalises it by hand.',
    'Of two doors of an air lock one is shut before the other is opened; mark it on both.',
    'The pressure is even and slow. Blast, rebound and debris are another matter, and are not answered here.',
    'The leaf is a plain plate on a rebate all round, for steel with a Poisson ratio of 0.3; frame, hinges, latch and their fixing into the wall are not checked.',
    'A seal that is old, cold or painted over leaks: test the lock with the blower running.',
  ],
  second: airLockDoorSecond,
  published: airLockDoorCases,
  example: {
    width: '0.9 m',
    height: '2 m',
    thickness: '12 mm',
    design_pressure: '10 kPa',
    strength: '235 MPa',
    bending_limit: '4 mm',
    difference: '60 Pa',
    opens: 'against the pressure',
    closer: '30 N',
    handle: '70 mm',
    gap: '0.1 mm',
    leak_limit: '5 L/s',
  },
})
