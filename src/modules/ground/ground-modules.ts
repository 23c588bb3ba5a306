import type { Module } from '../module.ts'
import { baseHeave } from './base-heave.ts'
import { baseUplift } from './base-uplift.ts'
import { batteredPit } from './battered-pit.ts'
import { bearingEn1997 } from './bearing-en-1997.ts'
import { bearingMeyerhof } from './bearing-meyerhof.ts'
import { bearingTerzaghi } from './bearing-terzaghi.ts'
import { bracedPit } from './braced-pit.ts'
import { cantileverSheeting } from './cantilever-sheeting.ts'
import { compaction } from './compaction.ts'
import { earthPressure } from './earth-pressure.ts'
import { flotation } from './flotation.ts'
import { infiniteSlope } from './infinite-slope.ts'
import { levels } from './levels.ts'
import { pitInflow } from './pit-inflow.ts'
import { retainingStability } from './retaining-stability.ts'
import { settlementElastic } from './settlement-elastic.ts'
import { settlementOedometer } from './settlement-oedometer.ts'
import { slopeCircle } from './slope-circle.ts'
import { soilArching } from './soil-arching.ts'
import { soilStress } from './soil-stress.ts'
import { soilTreatment } from './soil-treatment.ts'
import { surfaceLoad } from './surface-load.ts'

/** The modules of the ground, listed by hand, in the order of the job. */
export const groundModules: readonly Module[] = [
  levels,
  soilStress,
  batteredPit,
  pitInflow,
  baseUplift,
  baseHeave,
  bracedPit,
  cantileverSheeting,
  surfaceLoad,
  earthPressure,
  flotation,
  bearingEn1997,
  bearingTerzaghi,
  bearingMeyerhof,
  settlementElastic,
  settlementOedometer,
  retainingStability,
  infiniteSlope,
  slopeCircle,
  compaction,
  soilTreatment,
  soilArching,
]
