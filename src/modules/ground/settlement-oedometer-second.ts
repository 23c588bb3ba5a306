import type { Second } from '../module.ts'
import { solve } from '../words.ts'
import { claySlices } from './clay-slices.ts'
import { settlementUnit } from './settlement-inputs.ts'

const columns = ['thickness', 'C_c', 'C_r', 'e_0', 's_0', 's_y'] as const

/** The same clay in thin slices, each followed along its curve of void ratio. */
export const settlementOedometerSecond: Second = {
  title: 'Consolidation by slices',
  says: 'The same clay cut into thin slices, each followed along its curve: it shows where layers are too thick to go by their middle. Within a layer the yield stress stands as far above the stress before as it does in its middle.',
  steps: [
    solve(claySlices, {
      takes: {
        ...Object.fromEntries(columns.map(name => [name, { list: `layers.${name}` }])),
        gamma: { list: 'layers.gamma_layer' },
        width: 'width',
        length: 'length',
        depth: 'depth',
        pressure: 'pressure',
        total: 'q_tot',
        gamma_w: 'gamma_w',
        water: 'water_depth',
      },
      words: { heave: { choice: 'heave' } },
      gives: {
        settlement: {
          dimension: 'length',
          name: 's_slices',
          says: 'settlement by slices',
          symbol: 's_sl',
          unit: settlementUnit,
        },
      },
      says: 'settlement added up slice by slice',
    }),
  ],
  compare: [{ first: 's_all', second: 's_slices', band: 0.1, says: 'beyond this the layers are too thick: cut them' }],
}
