import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { step } from '../words.ts'
import { areaUnit, forceUnit, lengthUnit, pressureUnit, volumeUnit } from './ground-units.ts'

const statics = cite('statics')

/** A depth or height of the working, from statics. */
export const depth = (name: string, formula: string, more: { says: string; symbol?: string }): Step =>
  step(name, formula, { ...more, unit: lengthUnit, source: statics })
/** A plan area. */
export const area = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: areaUnit, source: statics })
/** A volume of concrete. */
export const volume = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: volumeUnit, source: statics })
/** A force; from statics unless another source is named. */
export const force = (
  name: string,
  formula: string,
  more: { says: string; symbol?: string; source?: Citation },
): Step => step(name, formula, { source: statics, ...more, unit: forceUnit })
/** A water pressure. */
export const waterPressure = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: pressureUnit, source: statics })
