import type { Second } from '../module.ts'
import { each, solve } from '../words.ts'
import { load, moment } from './braced-pit-envelope.ts'
import { envelopeSlices } from './envelope-slices.ts'
import { lineLoadUnit, lineMomentUnit } from './ground-units.ts'

/** All struts together against the whole envelope, in force and in moment about formation. */
export const bracedPitSecond: Second = {
  title: 'All struts against the whole envelope',
  says: 'The struts together bear the whole envelope, and turn about formation as it does; the envelope is added up in slices from its ordinates.',
  steps: [
    each('struts', [
      moment('M_base', 'R_s * (depth - z_up)', {
        says: 'moment of the strut above about formation',
        symbol: 'M_b',
      }),
    ]),
    load('R_all', 'sum(struts.R_s) + R_low', { says: 'all struts together', symbol: 'R_Sigma' }),
    moment('M_all', 'sum(struts.M_base) + R_low * (depth - z_low)', {
      says: 'moment of all struts about formation',
      symbol: 'M_Sigma',
    }),
    solve(envelopeSlices, {
      takes: { full: 'p_e', depth: 'depth' },
      words: { ground: { choice: 'ground' } },
      gives: {
        load: { dimension: 'force_per_length', name: 'P_slices', says: 'load of the envelope', unit: lineLoadUnit },
        moment: {
          dimension: 'moment_per_length',
          name: 'M_slices',
          says: 'its moment about formation',
          unit: lineMomentUnit,
        },
      },
      says: 'the envelope added up in slices',
    }),
  ],
  compare: [
    { first: 'R_all', second: 'P_slices', band: 1e-4, says: 'equilibrium of forces' },
    { first: 'M_all', second: 'M_slices', band: 1e-4, says: 'equilibrium of moments about formation' },
  ],
}
