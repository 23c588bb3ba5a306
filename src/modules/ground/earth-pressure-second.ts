import type { Second, Step } from '../module.ts'
import { solve, when } from '../words.ts'
import { lineLoadUnit, lineMomentUnit } from './ground-units.ts'
import { wallSlices } from './wall-slices.ts'

const slices = (wet: boolean, rolled: boolean): readonly Step[] => [
  solve(wallSlices, {
    takes: {
      thickness: { list: 'layers.thickness' },
      gamma: { list: 'layers.gamma' },
      c: { list: 'layers.c' },
      K_h: { list: 'layers.K_h' },
      top: 'wall_top',
      base: 'wall_base',
      surcharge: 'surcharge',
      ...(wet ? { gamma_sat: { list: 'layers.gamma_sat' }, gamma_w: 'gamma_w', water: 'water_depth' } : {}),
      ...(rolled ? { least: { list: 'layers.p_least' } } : {}),
    },
    words: { state: { choice: 'state' } },
    gives: {
      force: { dimension: 'force_per_length', name: 'P_slices', says: 'force on the wall', unit: lineLoadUnit },
      moment: {
        dimension: 'moment_per_length',
        name: 'M_slices',
        says: 'its moment about the base of the wall',
        unit: lineMomentUnit,
      },
    },
    says: 'pressure added up slice by slice',
  }),
]

const byRoller = (wet: boolean): Step => when({ given: 'roller' }, { yes: slices(wet, true), no: slices(wet, false) })

/** The closed-form resultant against pressure added up slice by slice. */
export const earthPressureSecond: Second = {
  title: 'Pressure added up by slices',
  says: 'Stress and pressure are marched down from the ground slice by slice; only the coefficients are shared.',
  steps: [
    when(
      { choice: 'groundwater', is: ['below the wall'] },
      {
        yes: [byRoller(false)],
        no: [when({ given: 'water_depth' }, { yes: [byRoller(true)], no: [byRoller(false)] })],
      },
    ),
  ],
  compare: [
    {
      first: 'P',
      second: 'P_slices',
      band: 0.002,
      says: 'thin slices miss only where a boundary falls inside one',
    },
    {
      first: 'M_toe',
      second: 'M_slices',
      band: 0.002,
      says: 'the same, by the height of each slice',
    },
  ],
}
