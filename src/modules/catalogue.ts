import { anchorageAci318 } from './concrete/anchorage-aci-318.ts'
import { anchorageEn1992 } from './concrete/anchorage-en-1992.ts'
import { anchorageIs456 } from './concrete/anchorage-is-456.ts'
import { barChoiceAci318 } from './concrete/bar-choice-aci-318.ts'
import { barChoiceEn1992 } from './concrete/bar-choice-en-1992.ts'
import { barChoiceIs456 } from './concrete/bar-choice-is-456.ts'
import { barSchedule } from './concrete/bar-schedule.ts'
import { crackWidthEn1992 } from './concrete/crack-width-en-1992.ts'
import { crackWidthIs456 } from './concrete/crack-width-is-456.ts'
import { flexureAci318 } from './concrete/flexure-aci-318.ts'
import { flexureEn1992 } from './concrete/flexure-en-1992.ts'
import { flexureIs456 } from './concrete/flexure-is-456.ts'
import { formPressureAci347 } from './concrete/form-pressure-aci-347.ts'
import { formPressureCiria108 } from './concrete/form-pressure-ciria-108.ts'
import { oneWayShearAci318 } from './concrete/one-way-shear-aci-318.ts'
import { oneWayShearEn1992 } from './concrete/one-way-shear-en-1992.ts'
import { oneWayShearIs456 } from './concrete/one-way-shear-is-456.ts'
import { oneWaySlab } from './concrete/one-way-slab.ts'
import { oneWaySlabAci318 } from './concrete/one-way-slab-aci-318.ts'
import { oneWaySlabIs456 } from './concrete/one-way-slab-is-456.ts'
import { quantities } from './concrete/quantities.ts'
import { raftReaction } from './concrete/raft-reaction.ts'
import { roofLoad } from './concrete/roof-load.ts'
import { slabFormwork } from './concrete/slab-formwork.ts'
import { spanDepthAci318 } from './concrete/span-depth-aci-318.ts'
import { spanDepthEn1992 } from './concrete/span-depth-en-1992.ts'
import { spanDepthIs456 } from './concrete/span-depth-is-456.ts'
import { strengthAge } from './concrete/strength-age.ts'
import { twoWaySlab } from './concrete/two-way-slab.ts'
import { twoWaySlabAci63 } from './concrete/two-way-slab-aci-63.ts'
import { wallOpening } from './concrete/wall-opening.ts'
import { wallPlate } from './concrete/wall-plate.ts'
import { wallStrip } from './concrete/wall-strip.ts'
import { baseHeave } from './ground/base-heave.ts'
import { baseUplift } from './ground/base-uplift.ts'
import { batteredPit } from './ground/battered-pit.ts'
import { bearingEn1997 } from './ground/bearing-en-1997.ts'
import { bearingMeyerhof } from './ground/bearing-meyerhof.ts'
import { bearingTerzaghi } from './ground/bearing-terzaghi.ts'
import { bracedPit } from './ground/braced-pit.ts'
import { cantileverSheeting } from './ground/cantilever-sheeting.ts'
import { compaction } from './ground/compaction.ts'
import { earthPressure } from './ground/earth-pressure.ts'
import { flotation } from './ground/flotation.ts'
import { levels } from './ground/levels.ts'
import { pitInflow } from './ground/pit-inflow.ts'
import { retainingStability } from './ground/retaining-stability.ts'
import { settlementElastic } from './ground/settlement-elastic.ts'
import { settlementOedometer } from './ground/settlement-oedometer.ts'
import { soilArching } from './ground/soil-arching.ts'
import { soilStress } from './ground/soil-stress.ts'
import { soilTreatment } from './ground/soil-treatment.ts'
import { surfaceLoad } from './ground/surface-load.ts'
import { airLockDoor } from './living/air-lock-door.ts'
import { airSupply } from './living/air-supply.ts'
import { closedUpTime } from './living/closed-up-time.ts'
import { ductLoss } from './living/duct-loss.ts'
import { foodStore } from './living/food-store.ts'
import { handPump } from './living/hand-pump.ts'
import { heatBalance } from './living/heat-balance.ts'
import { pumpedDrain } from './living/pumped-drain.ts'
import { storesRegister } from './living/stores-register.ts'
import { ventSeparation } from './living/vent-separation.ts'
import { wasteStore } from './living/waste-store.ts'
import { waterStore } from './living/water-store.ts'
import type { Module } from './module.ts'
import { batteryBank } from './power/battery-bank.ts'
import { cableDrop } from './power/cable-drop.ts'
import { cableDropAwg } from './power/cable-drop-awg.ts'
import { dcLoad } from './power/dc-load.ts'
import { fuelStore } from './power/fuel-store.ts'
import { pvArray } from './power/pv-array.ts'
import { windCharge } from './power/wind-charge.ts'
import { falloutDecay } from './shielding/fallout-decay.ts'
import { gammaSlab } from './shielding/gamma-slab.ts'
import { halvingLayers } from './shielding/halving-layers.ts'
import { passageBends } from './shielding/passage-bends.ts'
import { pipeStreaming } from './shielding/pipe-streaming.ts'
import { protectionSummary } from './shielding/protection-summary.ts'
import { roofProtection } from './shielding/roof-protection.ts'

/** Every module, listed once, by hand, in the order of the job. */
export const catalogue: readonly Module[] = [
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
  compaction,
  soilTreatment,
  soilArching,
  roofLoad,
  raftReaction,
  twoWaySlab,
  twoWaySlabAci63,
  oneWaySlab,
  oneWaySlabIs456,
  oneWaySlabAci318,
  wallStrip,
  wallPlate,
  flexureIs456,
  flexureAci318,
  flexureEn1992,
  barChoiceIs456,
  barChoiceAci318,
  barChoiceEn1992,
  oneWayShearIs456,
  crackWidthIs456,
  crackWidthEn1992,
  oneWayShearAci318,
  oneWayShearEn1992,
  spanDepthIs456,
  spanDepthEn1992,
  spanDepthAci318,
  strengthAge,
  anchorageIs456,
  anchorageAci318,
  anchorageEn1992,
  wallOpening,
  formPressureAci347,
  formPressureCiria108,
  slabFormwork,
  quantities,
  barSchedule,
  halvingLayers,
  gammaSlab,
  falloutDecay,
  roofProtection,
  passageBends,
  pipeStreaming,
  protectionSummary,
  airSupply,
  closedUpTime,
  ductLoss,
  ventSeparation,
  heatBalance,
  airLockDoor,
  pumpedDrain,
  handPump,
  storesRegister,
  waterStore,
  foodStore,
  wasteStore,
  dcLoad,
  batteryBank,
  cableDrop,
  cableDropAwg,
  pvArray,
  windCharge,
  fuelStore,
]
