import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { step } from '../words.ts'

/** Units, supports and lines that the workings of a wall strip share. */
export const depth = { SI: 'm', US: 'ft' }
export const force = { SI: 'kN/m', US: 'plf' }
export const moment = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
export const statics = cite('statics')

export const topFixed = { choice: 'top', is: ['fixed'] }
export const topPinned = { choice: 'top', is: ['pinned'] }
export const topFree = { choice: 'top', is: ['free'] }

export const noMoment = (name: string, says: string): Step => step(name, '0 kN*m/m', { says, unit: moment })
