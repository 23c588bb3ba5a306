import { dimensionless, dimensionOf, power, times } from './dimension.ts'
import { type Exact, exactOf, exactPower, exactTimes } from './exact.ts'
import { type Base, bases, type Dimension } from './types.ts'
import { readParts } from './unit-parts.ts'

/** One unit of the closed list. */
export interface ListedUnit {
  readonly name: string
  /** What one of it is, in other units of the list. */
  readonly is: string
  readonly exact: Exact
  readonly dimension: Dimension
  /** Upright TeX, without braces round it. */
  readonly tex: string
  /** Plain text: `°C`, `µm`, `inH₂O`. */
  readonly plain: string
  readonly singular: string
  readonly plural: string
  /** Temperature points only: SI = value * factor + offset. */
  readonly offset?: number
  /** True where no gap stands between number and unit. */
  readonly close?: boolean
}

type Row = readonly [name: string, is: string, singular: string, plural?: string]

/*
 * Definitions. Those of the inch, foot, pound and gallon are exact by the international agreement of 1959 and US law (NIST SP 811,
 * appendix B.6; NIST Handbook 44, appendix C); standard gravity 9.80665 m/s^2 (3rd CGPM 1901); e = 1.602176634e-19 C (SI, 2019);
 * atmosphere 101325 Pa (10th CGPM 1954), torr a 760th of it; conventional mercury 13595.1 kg/m^3 and water 1000 kg/m^3 under standard
 * gravity (ISO 80000-4 annex; SP 811 B.8); thermochemical calorie 4.184 J; Btu of the International Table 1055.05585262 J (SP 811 B.8
 * note); horsepower 550 ft*lbf/s; curie 3.7e10 Bq, roentgen 2.58e-4 C/kg, rem 0.01 Sv (SP 811 table 10); year of 365.25 days (Julian year, IAU);
 * wire gauge area in circular mils (NIST Handbook 100). Sources from memory; the outside table they are checked against stands in the tests.
 */
const rows: readonly Row[] = [
  // plain ratios, angles and counts
  ['percent', '0.01', 'percent', 'percent'],
  ['ppm', '1e-6', 'part per million', 'parts per million'],
  ['ppb', '1e-9', 'part per billion', 'parts per billion'],
  ['rad', '1', 'radian'],
  ['mrad', '0.001 rad', 'milliradian'],
  ['deg', 'pi/180 rad', 'degree'],
  ['person', 'base person', 'person', 'persons'],
  // length
  ['m', 'base length', 'metre'],
  ['km', '1000 m', 'kilometre'],
  ['cm', '0.01 m', 'centimetre'],
  ['mm', '0.001 m', 'millimetre'],
  ['um', '1e-6 m', 'micrometre'],
  ['in', '0.0254 m', 'inch', 'inches'],
  ['mil', '0.001 in', 'mil'],
  ['ft', '12 in', 'foot', 'feet'],
  ['yd', '3 ft', 'yard'],
  ['mi', '5280 ft', 'mile'],
  // area
  ['ha', '10000 m^2', 'hectare'],
  ['acre', '43560 ft^2', 'acre'],
  ['kcmil', 'pi/0.004 mil^2', 'thousand circular mil'],
  // volume
  ['L', '0.001 m^3', 'litre'],
  ['mL', '0.001 L', 'millilitre'],
  ['gal', '231 in^3', 'gallon'],
  // time
  ['s', 'base time', 'second'],
  ['ms', '0.001 s', 'millisecond'],
  ['min', '60 s', 'minute'],
  ['hr', '60 min', 'hour'],
  ['day', '24 hr', 'day'],
  ['week', '7 day', 'week'],
  ['yr', '365.25 day', 'year'],
  ['Hz', '1 1/s', 'hertz', 'hertz'],
  ['kHz', '1000 Hz', 'kilohertz', 'kilohertz'],
  ['ACH', '1 1/hr', 'air change per hour', 'air changes per hour'],
  // mass
  ['kg', 'base mass', 'kilogram'],
  ['g', '0.001 kg', 'gram'],
  ['mg', '0.001 g', 'milligram'],
  ['ug', '1e-6 g', 'microgram'],
  ['tonne', '1000 kg', 'tonne'],
  ['lb', '0.45359237 kg', 'pound'],
  ['lbm', '1 lb', 'pound mass', 'pounds mass'],
  ['oz', '1/16 lb', 'ounce'],
  ['ton', '2000 lb', 'short ton'],
  // temperature
  ['K', 'base temperature', 'kelvin', 'kelvin'],
  ['delta_degC', '1 K', 'degree Celsius of difference', 'degrees Celsius of difference'],
  ['delta_degF', '5/9 K', 'degree Fahrenheit of difference', 'degrees Fahrenheit of difference'],
  ['degC', '1 K', 'degree Celsius', 'degrees Celsius'],
  ['degF', '5/9 K', 'degree Fahrenheit', 'degrees Fahrenheit'],
  // force
  ['N', '1 kg*m/s^2', 'newton'],
  ['kN', '1000 N', 'kilonewton'],
  ['MN', '1e6 N', 'meganewton'],
  ['kgf', '9.80665 N', 'kilogram force', 'kilograms force'],
  ['lbf', '0.45359237 kgf', 'pound force', 'pounds force'],
  ['kip', '1000 lbf', 'kip'],
  ['tonf', '2000 lbf', 'short ton force', 'short tons force'],
  ['slug', '1 lbf*s^2/ft', 'slug'],
  // force along a line
  ['plf', '1 lbf/ft', 'pound force per foot', 'pounds force per foot'],
  ['klf', '1 kip/ft', 'kip per foot', 'kips per foot'],
  // pressure and stress
  ['Pa', '1 N/m^2', 'pascal'],
  ['hPa', '100 Pa', 'hectopascal'],
  ['kPa', '1000 Pa', 'kilopascal'],
  ['MPa', '1e6 Pa', 'megapascal'],
  ['GPa', '1e9 Pa', 'gigapascal'],
  ['bar', '1e5 Pa', 'bar'],
  ['mbar', '100 Pa', 'millibar'],
  ['atm', '101325 Pa', 'atmosphere'],
  ['torr', '1/760 atm', 'torr', 'torr'],
  ['psi', '1 lbf/in^2', 'pound per square inch', 'pounds per square inch'],
  ['ksi', '1000 psi', 'kip per square inch', 'kips per square inch'],
  ['psf', '1 lbf/ft^2', 'pound per square foot', 'pounds per square foot'],
  ['ksf', '1000 psf', 'kip per square foot', 'kips per square foot'],
  ['tsf', '2000 psf', 'short ton per square foot', 'short tons per square foot'],
  ['mmHg', '133.322387415 Pa', 'millimetre of mercury', 'millimetres of mercury'],
  ['inHg', '25.4 mmHg', 'inch of mercury', 'inches of mercury'],
  ['mmH2O', '9.80665 Pa', 'millimetre of water', 'millimetres of water'],
  ['inH2O', '25.4 mmH2O', 'inch of water', 'inches of water'],
  ['ftH2O', '12 inH2O', 'foot of water', 'feet of water'],
  // unit weight
  ['pcf', '1 lbf/ft^3', 'pound force per cubic foot', 'pounds force per cubic foot'],
  ['kcf', '1000 pcf', 'kip per cubic foot', 'kips per cubic foot'],
  ['pci', '1 lbf/in^3', 'pound force per cubic inch', 'pounds force per cubic inch'],
  // energy and power
  ['J', '1 N*m', 'joule'],
  ['kJ', '1000 J', 'kilojoule'],
  ['MJ', '1e6 J', 'megajoule'],
  ['GJ', '1e9 J', 'gigajoule'],
  ['cal', '4.184 J', 'calorie'],
  ['kcal', '1000 cal', 'kilocalorie'],
  ['Btu', '1055.05585262 J', 'British thermal unit'],
  ['eV', '1.602176634e-19 J', 'electronvolt'],
  ['keV', '1000 eV', 'kiloelectronvolt'],
  ['MeV', '1e6 eV', 'megaelectronvolt'],
  ['W', '1 J/s', 'watt'],
  ['mW', '0.001 W', 'milliwatt'],
  ['kW', '1000 W', 'kilowatt'],
  ['MW', '1e6 W', 'megawatt'],
  ['hp', '550 ft*lbf/s', 'horsepower', 'horsepower'],
  ['Wh', '1 W*hr', 'watt hour'],
  ['kWh', '1000 Wh', 'kilowatt hour'],
  ['MWh', '1e6 Wh', 'megawatt hour'],
  // electricity
  ['A', 'base current', 'ampere'],
  ['mA', '0.001 A', 'milliampere'],
  ['kA', '1000 A', 'kiloampere'],
  ['coulomb', '1 A*s', 'coulomb'],
  ['Ah', '1 A*hr', 'ampere hour'],
  ['mAh', '0.001 Ah', 'milliampere hour'],
  ['V', '1 W/A', 'volt'],
  ['mV', '0.001 V', 'millivolt'],
  ['kV', '1000 V', 'kilovolt'],
  ['VA', '1 V*A', 'volt ampere'],
  ['kVA', '1000 VA', 'kilovolt ampere'],
  ['ohm', '1 V/A', 'ohm'],
  ['mohm', '0.001 ohm', 'milliohm'],
  ['kohm', '1000 ohm', 'kilohm'],
  ['farad', '1 coulomb/V', 'farad'],
  // amount and light
  ['mol', 'base amount', 'mole'],
  ['kmol', '1000 mol', 'kilomole'],
  ['candela', 'base luminous', 'candela'],
  ['lumen', '1 candela', 'lumen'],
  ['lux', '1 lumen/m^2', 'lux', 'lux'],
  // radiation
  ['Bq', '1 1/s', 'becquerel'],
  ['kBq', '1000 Bq', 'kilobecquerel'],
  ['MBq', '1e6 Bq', 'megabecquerel'],
  ['GBq', '1e9 Bq', 'gigabecquerel'],
  ['TBq', '1e12 Bq', 'terabecquerel'],
  ['Ci', '3.7e10 Bq', 'curie'],
  ['mCi', '0.001 Ci', 'millicurie'],
  ['uCi', '1e-6 Ci', 'microcurie'],
  ['Gy', '1 J/kg', 'gray'],
  ['cGy', '0.01 Gy', 'centigray'],
  ['mGy', '0.001 Gy', 'milligray'],
  ['uGy', '1e-6 Gy', 'microgray'],
  ['Sv', 'base dose', 'sievert'],
  ['mSv', '0.001 Sv', 'millisievert'],
  ['uSv', '1e-6 Sv', 'microsievert'],
  ['rem', '0.01 Sv', 'rem'],
  ['mrem', '0.001 rem', 'millirem'],
  ['roentgen', '2.58e-4 coulomb/kg', 'roentgen'],
  ['mR', '0.001 roentgen', 'milliroentgen'],
  // flow and speed
  ['cfm', '1 ft^3/min', 'cubic foot per minute', 'cubic feet per minute'],
  ['gpm', '1 gal/min', 'gallon per minute', 'gallons per minute'],
  ['mph', '1 mi/hr', 'mile per hour', 'miles per hour'],
]

interface Print {
  readonly tex?: string
  readonly plain?: string
  readonly offset?: number
  readonly close?: boolean
}

/** Units that are not printed as they are typed. */
const prints: Readonly<Record<string, Print>> = {
  percent: { tex: '\\%', plain: '%' },
  deg: { tex: '{}^{\\circ}', plain: '°', close: true },
  degC: { tex: '{}^{\\circ}\\mathrm{C}', plain: '°C', offset: 273.15 },
  degF: { tex: '{}^{\\circ}\\mathrm{F}', plain: '°F', offset: (459.67 * 5) / 9 },
  delta_degC: { tex: '\\Delta{}^{\\circ}\\mathrm{C}', plain: 'Δ°C' },
  delta_degF: { tex: '\\Delta{}^{\\circ}\\mathrm{F}', plain: 'Δ°F' },
  mmH2O: { tex: '\\mathrm{mmH_{2}O}', plain: 'mmH₂O' },
  inH2O: { tex: '\\mathrm{inH_{2}O}', plain: 'inH₂O' },
  ftH2O: { tex: '\\mathrm{ftH_{2}O}', plain: 'ftH₂O' },
  ohm: { tex: '\\Omega', plain: 'Ω' },
  mohm: { tex: '\\mathrm{m\\Omega}', plain: 'mΩ' },
  kohm: { tex: '\\mathrm{k\\Omega}', plain: 'kΩ' },
  farad: { tex: '\\mathrm{F}', plain: 'F' },
  coulomb: { tex: '\\mathrm{C}', plain: 'C' },
  candela: { tex: '\\mathrm{cd}', plain: 'cd' },
  lumen: { tex: '\\mathrm{lm}', plain: 'lm' },
  lux: { tex: '\\mathrm{lx}', plain: 'lx' },
  roentgen: { tex: '\\mathrm{R}', plain: 'R' },
}

const micro = (name: string): Print =>
  /^u[A-Z]|^u[mg]$/.test(name) ? { tex: `\\mathrm{μ${name.slice(1)}}`, plain: `µ${name.slice(1)}` } : {}

const listed = new Map(rows.map(row => [row[0], row]))
/** Few notebooks use more than a dozen: each is worked out when it is first wanted. */
const known = new Map<string, ListedUnit>()

function entry([name, is, singular, plural = `${singular}s`]: Row): ListedUnit {
  const print = { tex: `\\mathrm{${name}}`, plain: name, ...micro(name), ...prints[name] }
  return { name, is, singular, plural, ...print, ...worth(is) }
}

function worth(is: string): { exact: Exact; dimension: Dimension } {
  const [number = '', ...rest] = is.split(' ')
  if (number === 'base') return { exact: exactOf('1'), dimension: dimensionOf({ [baseNamed(rest.join(' '))]: 1 }) }
  const read = readParts(rest.join(' '))
  if (!read.ok) throw new SyntaxError(`${is}: ${read.fault.says}`)
  return read.parts.reduce(
    (so, part) => {
      const of = listedUnit(part.name)
      if (!of) throw new SyntaxError(`${is}: \`${part.name}\` is not listed`)
      return {
        exact: exactTimes(so.exact, exactPower(of.exact, part.exponent)),
        dimension: times(so.dimension, power(of.dimension, part.exponent)),
      }
    },
    { exact: exactOf(number), dimension: dimensionless },
  )
}

function baseNamed(text: string): Base {
  const base = bases.find(each => each === text)
  if (!base) throw new SyntaxError(`\`${text}\` is not a base`)
  return base
}

/** The listed unit of this name, or undefined. */
export function listedUnit(name: string): ListedUnit | undefined {
  const before = known.get(name)
  const row = listed.get(name)
  if (before || !row) return before
  const unit = entry(row)
  known.set(name, unit)
  return unit
}

/** Whether the closed list has this name. */
export const isUnitName = (name: string): boolean => listed.has(name)

/** All names of the closed list, in its order. */
export const unitNames: readonly string[] = [...listed.keys()]
