import type { UnitChoice } from '../module.ts'

/** Units that keep a line of ground working coherent: m, kN and kPa, or ft, lbf and psf. */
export const lengthUnit: UnitChoice = { SI: 'm', US: 'ft' }
export const areaUnit: UnitChoice = { SI: 'm^2', US: 'ft^2' }
export const volumeUnit: UnitChoice = { SI: 'm^3', US: 'ft^3' }
export const forceUnit: UnitChoice = { SI: 'kN', US: 'lbf' }
export const lineLoadUnit: UnitChoice = { SI: 'kN/m', US: 'plf' }
export const lineMomentUnit: UnitChoice = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
export const momentUnit: UnitChoice = { SI: 'kN*m', US: 'lbf*ft' }
export const pressureUnit: UnitChoice = { SI: 'kPa', US: 'psf' }
export const weightUnit: UnitChoice = { SI: 'kN/m^3', US: 'pcf' }
export const angleUnit: UnitChoice = { SI: 'deg', US: 'deg' }
export const permeabilityUnit: UnitChoice = { SI: 'm/s', US: 'ft/day' }
export const flowUnit: UnitChoice = { SI: 'm^3/s', US: 'ft^3/day' }
export const pumpUnit: UnitChoice = { SI: 'L/s', US: 'gpm' }
