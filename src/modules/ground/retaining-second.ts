import type { Second } from '../module.ts'
import { solve } from '../words.ts'
import { lengthUnit, lineLoadUnit } from './ground-units.ts'
import { wallStrips } from './wall-strips.ts'

const same = (name: string): readonly [string, string] => [name, name]

/** The same forces by strips and slices: no levers and no trapeziums. */
export const retainingSecond: Second = {
  title: 'The wall by strips and slices',
  says: 'Weights, uplift and pressure are added up in thin strips and slices; only the coefficient of the earth pressure is shared.',
  steps: [
    solve(wallStrips, {
      takes: Object.fromEntries(
        [
          'stem',
          'stem_top',
          'stem_foot',
          'base',
          'toe',
          'heel',
          'gamma_c',
          'gamma',
          'gamma_sat',
          'gamma_w',
          'alpha',
          'K_a',
          'surcharge',
          'water',
        ].map(same),
      ),
      gives: {
        load: {
          dimension: 'force_per_length',
          name: 'V_strips',
          says: 'load on the ground, by strips',
          symbol: 'V_st',
          unit: lineLoadUnit,
        },
        across: {
          dimension: 'force_per_length',
          name: 'P_slices',
          says: 'horizontal force, by slices',
          symbol: 'P_sl',
          unit: lineLoadUnit,
        },
        lever: {
          dimension: 'length',
          name: 'x_strips',
          says: 'lever of the resultant from the toe',
          symbol: 'x_st',
          unit: lengthUnit,
        },
      },
      says: 'strips weighed and slices pressed',
    }),
  ],
  compare: [
    { first: 'V_b', second: 'V_strips', band: 0.002, says: 'strips miss only where an edge falls inside one' },
    { first: 'P_h', second: 'P_slices', band: 0.001, says: 'straight lines of pressure, added up' },
    { first: 'x_V', second: 'x_strips', band: 0.01, says: 'a small lever is the difference of two large moments' },
  ],
}
