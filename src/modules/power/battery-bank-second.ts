import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { check, solve } from '../words.ts'
import { chargeStepping } from './charge-stepping.ts'
import { days } from './power-units.ts'

const even = 'an even draw, so that steps lose nothing'
const source = cite('power-balance')

/** The needed and the chosen bank discharged hour by hour. */
export const batteryBankSecond: Second = {
  title: 'State of charge by the hour',
  says: 'The needed capacity and then the chosen bank are emptied hour by hour at an even draw, each first made smaller by cold, margin and age. A bank of just the needed capacity ends the autonomy at the depth counted on, save where the daily depth governs and it ends higher. The factors themselves are shared, not proved.',
  steps: [
    solve(chargeStepping, {
      takes: { daily: 'daily_charge', bank: 'C_req', loss: 'k_all', allowed: 'D_use', autonomy: 'autonomy' },
      gives: {
        depth: { dimension: 'ratio', name: 'D_size', says: 'depth of the needed capacity at the end', symbol: 'D_r' },
      },
      says: 'a bank of just the needed capacity emptied hour by hour',
      source,
    }),
    solve(chargeStepping, {
      takes: { daily: 'daily_charge', bank: 'C_bank', loss: 'k_all', allowed: 'D_use', autonomy: 'autonomy' },
      gives: {
        depth: { dimension: 'ratio', name: 'D_step', says: 'depth of discharge at the end of the autonomy' },
        last: { dimension: 'time', name: 't_step', says: 'time until the depth counted on', unit: days },
      },
      says: 'the chosen bank emptied hour by hour',
      source,
    }),
    check('depth', 'D_step <= D_use', { says: 'the stepped depth of discharge stays within the one counted on' }),
  ],
  compare: [
    {
      first: 'D_use',
      second: 'D_size',
      band: 1e-6,
      says: even,
      when: { choice: 'method', is: ['worksheet', 'IEEE 485'] },
    },
    { first: 'D_end', second: 'D_step', band: 1e-6, says: even },
    { first: 't_hold', second: 't_step', band: 1e-6, says: even },
  ],
}
