import type { Dimension } from './types.ts'
import { unitOf } from './unit.ts'

/** A named dimension with the units its results are shown in when nobody says. */
export interface NamedDimension {
  readonly name: string
  readonly dimension: Dimension
  /** `a pressure`: as a message says it. */
  readonly words: string
  readonly SI: string
  readonly US: string
}

type Row = readonly [name: string, words: string, SI: string, US: string]

/** The first row of a dimension gives its words and its units; later rows of the same dimension are other names for it. */
const rows: readonly Row[] = [
  ['ratio', 'a plain number', '', ''],
  ['angle', 'an angle', '', ''],
  ['length', 'a length', 'm', 'ft'],
  ['area_per_length', 'an area per length', 'mm^2/m', 'in^2/ft'],
  ['area', 'an area', 'm^2', 'ft^2'],
  ['volume', 'a volume', 'm^3', 'ft^3'],
  ['section_modulus', 'a section modulus', 'mm^3', 'in^3'],
  ['inertia', 'a second moment of area', 'm^4', 'in^4'],
  ['per_length', 'a number per length', '1/m', '1/ft'],
  ['curvature', 'a curvature', '1/m', '1/ft'],
  ['per_area', 'a number per area', '1/m^2', '1/ft^2'],
  ['per_volume', 'a number per volume', '1/m^3', '1/ft^3'],
  ['mass', 'a mass', 'kg', 'lb'],
  ['mass_per_length', 'a mass per length', 'kg/m', 'lb/ft'],
  ['mass_per_area', 'a mass per area', 'kg/m^2', 'lb/ft^2'],
  ['density', 'a density', 'kg/m^3', 'lb/ft^3'],
  ['specific_volume', 'a volume per mass', 'm^3/kg', 'ft^3/lb'],
  ['area_per_mass', 'an area per mass', 'cm^2/g', 'ft^2/lb'],
  ['time', 'a time', 's', 's'],
  ['per_time', 'a number per time', '1/s', '1/s'],
  ['frequency', 'a frequency', 'Hz', 'Hz'],
  ['activity', 'an activity', 'Bq', 'Bq'],
  ['air_changes', 'a number of air changes', 'ACH', 'ACH'],
  ['velocity', 'a velocity', 'm/s', 'ft/s'],
  ['permeability', 'a permeability', 'm/s', 'ft/s'],
  ['acceleration', 'an acceleration', 'm/s^2', 'ft/s^2'],
  ['flow', 'a flow', 'L/s', 'cfm'],
  ['flow_per_length', 'a flow per length', 'm^2/s', 'ft^2/s'],
  ['mass_flow', 'a mass flow', 'kg/s', 'lb/s'],
  ['temperature', 'a temperature', 'K', 'delta_degF'],
  ['per_temperature', 'a number per temperature', '1/K', '1/delta_degF'],
  ['temperature_per_length', 'a temperature gradient', 'K/m', 'delta_degF/ft'],
  ['force', 'a force', 'kN', 'kip'],
  ['moment_per_length', 'a moment per length', 'kN*m/m', 'kip*ft/ft'],
  ['force_per_length', 'a force per length', 'kN/m', 'kip/ft'],
  ['pressure', 'a pressure', 'kN/m^2', 'psf'],
  ['stress', 'a stress', 'MPa', 'psi'],
  ['unit_weight', 'a unit weight', 'kN/m^3', 'pcf'],
  ['subgrade_modulus', 'a subgrade modulus', 'kN/m^3', 'pci'],
  ['moment', 'a moment or an energy', 'kN*m', 'kip*ft'],
  ['energy', 'an energy', 'kJ', 'Btu'],
  ['flexural_rigidity', 'a flexural rigidity', 'kN*m^2', 'kip*ft^2'],
  ['pressure_per_length_cubed', 'a pressure per volume', 'kN/m^5', 'kip/ft^5'],
  ['dynamic_viscosity', 'a dynamic viscosity', 'Pa*s', 'psf*s'],
  ['power', 'a power', 'W', 'W'],
  ['power_per_area', 'a power per area', 'W/m^2', 'Btu/(hr*ft^2)'],
  ['power_per_length', 'a power per length', 'W/m', 'W/ft'],
  ['conductivity', 'a thermal conductivity', 'W/(m*K)', 'Btu/(hr*ft*delta_degF)'],
  ['heat_transfer', 'a heat transfer coefficient', 'W/(m^2*K)', 'Btu/(hr*ft^2*delta_degF)'],
  ['thermal_resistance', 'a thermal resistance of an area', 'm^2*K/W', 'hr*ft^2*delta_degF/Btu'],
  ['resistance_to_heat', 'a thermal resistance', 'K/W', 'hr*delta_degF/Btu'],
  ['heat_loss', 'a power per temperature', 'W/K', 'Btu/(hr*delta_degF)'],
  ['heat_capacity', 'a heat capacity', 'kJ/K', 'Btu/delta_degF'],
  ['specific_heat', 'a specific heat', 'kJ/(kg*K)', 'Btu/(lb*delta_degF)'],
  ['specific_energy', 'an energy per mass', 'J/kg', 'Btu/lb'],
  ['absorbed_dose', 'an absorbed dose', 'Gy', 'Gy'],
  ['absorbed_dose_rate', 'an absorbed dose rate', 'Gy/hr', 'Gy/hr'],
  ['dose', 'a dose equivalent', 'mSv', 'rem'],
  ['dose_rate', 'a dose equivalent rate', 'mSv/hr', 'rem/hr'],
  ['dose_per_absorbed_dose', 'a dose equivalent per absorbed dose', 'Sv/Gy', 'Sv/Gy'],
  ['exposure', 'an exposure', 'roentgen', 'roentgen'],
  ['exposure_rate', 'an exposure rate', 'roentgen/hr', 'roentgen/hr'],
  ['activity_per_area', 'an activity per area', 'Bq/m^2', 'Bq/ft^2'],
  ['current', 'an electric current', 'A', 'A'],
  ['charge', 'an electric charge', 'Ah', 'Ah'],
  ['voltage', 'a voltage', 'V', 'V'],
  ['resistance', 'an electric resistance', 'ohm', 'ohm'],
  ['resistance_per_length', 'a resistance per length', 'ohm/m', 'ohm/ft'],
  ['resistivity', 'a resistivity', 'ohm*m', 'ohm*ft'],
  ['amount', 'an amount of substance', 'mol', 'mol'],
  ['mass_per_amount', 'a molar mass', 'g/mol', 'g/mol'],
  ['illuminance', 'an illuminance', 'lux', 'lux'],
  ['persons', 'a number of persons', 'person', 'person'],
  ['per_person', 'a number per person', '1/person', '1/person'],
  ['person_time', 'a time for persons', 'person*day', 'person*day'],
  ['flow_per_person', 'a flow per person', 'L/(s*person)', 'cfm/person'],
  ['mass_per_person', 'a mass per person', 'kg/person', 'lb/person'],
  ['mass_flow_per_person', 'a mass per person and time', 'kg/(person*day)', 'lb/(person*day)'],
  ['area_per_person', 'an area per person', 'm^2/person', 'ft^2/person'],
  ['volume_per_person', 'a volume per person', 'L/person', 'gal/person'],
  ['power_per_person', 'a power per person', 'W/person', 'Btu/(hr*person)'],
  ['energy_per_person', 'an energy per person', 'MJ/person', 'kcal/person'],
]

/** Every named dimension, in order of precedence. The dimension of a row is read from its unit when it is first wanted. */
export const namedDimensions: readonly NamedDimension[] = rows.map(([name, words, SI, US]) => {
  let dimension: Dimension | undefined
  return {
    name,
    words,
    SI,
    US,
    get dimension() {
      dimension ??= unitOf(SI).dimension
      return dimension
    },
  }
})

const found = new Map<Dimension, NamedDimension | undefined>()

/** The row that stands for a dimension, or undefined where it has no name. */
export function rowOf(dimension: Dimension): NamedDimension | undefined {
  if (!found.has(dimension))
    found.set(
      dimension,
      namedDimensions.find(each => each.dimension === dimension),
    )
  return found.get(dimension)
}
