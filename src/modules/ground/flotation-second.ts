import type { Second, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { solve, step } from '../words.ts'
import { forceUnit, volumeUnit } from './ground-units.ts'
import { wettedPanels } from './wetted-panels.ts'

const stage = (tag: 'fin' | 'build' | 'open', water: string, says: string): readonly Step[] => [
  step(
    `V_sub_${tag}`,
    `A_raft * min(max(z_raft - ${water}, 0 m), raft) + A_box * min(max(z_raft_top - ${water}, 0 m), clear + roof)`,
    { says: `volume of the structure below the water, ${says}`, unit: volumeUnit, source: cite('statics') },
  ),
  step(`B_${tag}`, `gamma_w * V_sub_${tag}`, {
    says: 'weight of the water it displaces',
    unit: forceUnit,
    source: cite('statics', 'Archimedes'),
  }),
  solve(wettedPanels, {
    takes: {
      long: 'plan_length',
      wide: 'plan_width',
      toe: 'toe',
      roof: 'z_roof',
      ledge: 'z_raft_top',
      under: 'z_raft',
      water,
      gamma_w: 'gamma_w',
    },
    gives: {
      force: {
        dimension: 'force',
        name: `B_panels_${tag}`,
        says: `upward force of the water, ${says}`,
        unit: forceUnit,
      },
    },
    says: 'pressure added up over underside, roof and toe',
  }),
]

/** Uplift less the water on top, as displaced volume and as pressure over the wetted faces. */
export const flotationSecond: Second = {
  title: 'Displaced water, and pressure over the wetted faces',
  says: 'The uplift less the water on top is the weight of the displaced water, and the sum of the pressure over all wetted faces.',
  steps: [
    ...stage('fin', 'water_depth', 'finished'),
    ...stage('build', 'water_building', 'while building'),
    ...stage('open', 'water_open', 'without its roof'),
  ],
  compare: (['fin', 'build', 'open'] as const).flatMap(tag => [
    { first: `U_net_${tag}`, second: `B_${tag}`, band: 1e-6, says: 'the same force by Archimedes; both are exact' },
    { first: `U_net_${tag}`, second: `B_panels_${tag}`, band: 1e-6, says: 'flat faces, so panels lose nothing' },
  ]),
}
