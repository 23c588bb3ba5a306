import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { step } from '../words.ts'
import { lengthUnit, lineLoadUnit, lineMomentUnit, pressureUnit } from './ground-units.ts'

const statics = cite('statics')

/** The classical cantilever wall in limit equilibrium, as the textbook has it. */
export const das = cite('das-foundation', 'cantilever sheet piles')

/** A height or depth of the working. */
export const height = (name: string, formula: string, says: string, source: Citation = statics): Step =>
  step(name, formula, { says, unit: lengthUnit, source })
/** A pressure on the wall. */
export const stress = (name: string, formula: string, says: string, source: Citation = cite('rankine')): Step =>
  step(name, formula, { says, unit: pressureUnit, source })
/** A force for one length of wall. */
export const lineForce = (name: string, formula: string, says: string, source: Citation = statics): Step =>
  step(name, formula, { says, unit: lineLoadUnit, source })
/** A moment for one length of wall. */
export const lineMoment = (name: string, formula: string, says: string, source: Citation = statics): Step =>
  step(name, formula, { says, unit: lineMomentUnit, source })
