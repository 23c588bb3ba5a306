import type { Module } from '../module.ts'
import { anchorageAci318 } from './anchorage-aci-318.ts'
import { anchorageEn1992 } from './anchorage-en-1992.ts'
import { anchorageIs456 } from './anchorage-is-456.ts'
import { barChoiceAci318 } from './bar-choice-aci-318.ts'
import { barChoiceEn1992 } from './bar-choice-en-1992.ts'
import { barChoiceIs456 } from './bar-choice-is-456.ts'
import { barSchedule } from './bar-schedule.ts'
import { crackWidthEn1992 } from './crack-width-en-1992.ts'
import { crackWidthIs456 } from './crack-width-is-456.ts'
import { durabilityIs456 } from './durability-is-456.ts'
import { flexureAci318 } from './flexure-aci-318.ts'
import { flexureEn1992 } from './flexure-en-1992.ts'
import { flexureIs456 } from './flexure-is-456.ts'
import { formPressureAci347 } from './form-pressure-aci-347.ts'
import { formPressureCiria108 } from './form-pressure-ciria-108.ts'
import { oneWayShearAci318 } from './one-way-shear-aci-318.ts'
import { oneWayShearEn1992 } from './one-way-shear-en-1992.ts'
import { oneWayShearIs456 } from './one-way-shear-is-456.ts'
import { oneWaySlab } from './one-way-slab.ts'
import { oneWaySlabAci318 } from './one-way-slab-aci-318.ts'
import { oneWaySlabIs456 } from './one-way-slab-is-456.ts'
import { punchingShearEn1992 } from './punching-shear-en-1992.ts'
import { quantities } from './quantities.ts'
import { raftReaction } from './raft-reaction.ts'
import { roofLoad } from './roof-load.ts'
import { slabFormwork } from './slab-formwork.ts'
import { spanDepthAci318 } from './span-depth-aci-318.ts'
import { spanDepthEn1992 } from './span-depth-en-1992.ts'
import { spanDepthIs456 } from './span-depth-is-456.ts'
import { strengthAge } from './strength-age.ts'
import { twoWaySlab } from './two-way-slab.ts'
import { twoWaySlabAci63 } from './two-way-slab-aci-63.ts'
import { wallOpening } from './wall-opening.ts'
import { wallPlate } from './wall-plate.ts'
import { wallStrip } from './wall-strip.ts'

/** The modules of the concrete, listed by hand, in the order of the job. */
export const concreteModules: readonly Module[] = [
  durabilityIs456,
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
  punchingShearEn1992,
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
]
