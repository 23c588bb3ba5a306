import type { Amount } from './amount.ts'

/*
 * The pencil's own table of units as they are printed, independent of the room that converts quantities. Exponents of metre,
 * kilogram, second, kelvin, ampere, mole, candela, person, sievert. Factors: NIST SP 811 appendix B (memory).
 */
type Row = readonly [names: string, factor: number, ...exponents: number[]]

const inch = 0.0254
const foot = 0.3048
const pound = 0.45359237
const gravity = 9.80665
const force = pound * gravity
const water = 1000 * gravity
const mercury = 133322.387415

const rows: readonly Row[] = [
  ['%', 0.01],
  ['‰', 0.001],
  ['ppm', 1e-6],
  ['ppb', 1e-9],
  ['rad', 1],
  ['mrad', 0.001],
  ['∘ °', Math.PI / 180],
  ['person persons', 1, 0, 0, 0, 0, 0, 0, 0, 1],
  ['m', 1, 1],
  ['km', 1000, 1],
  ['cm', 0.01, 1],
  ['mm', 0.001, 1],
  ['µm μm um', 1e-6, 1],
  ['in', inch, 1],
  ['mil', inch / 1000, 1],
  ['ft', foot, 1],
  ['yd', 3 * foot, 1],
  ['mi', 5280 * foot, 1],
  ['ha', 1e4, 2],
  ['acre', 43560 * foot ** 2, 2],
  ['kcmil', 250 * Math.PI * (inch / 1000) ** 2, 2],
  ['L', 1e-3, 3],
  ['mL', 1e-6, 3],
  ['gal', 231 * inch ** 3, 3],
  ['s', 1, 0, 0, 1],
  ['ms', 0.001, 0, 0, 1],
  ['min', 60, 0, 0, 1],
  ['h hr', 3600, 0, 0, 1],
  ['d day days', 86400, 0, 0, 1],
  ['week', 604800, 0, 0, 1],
  ['yr a', 365.25 * 86400, 0, 0, 1],
  ['Hz Bq', 1, 0, 0, -1],
  ['kHz kBq', 1e3, 0, 0, -1],
  ['MBq MHz', 1e6, 0, 0, -1],
  ['GBq', 1e9, 0, 0, -1],
  ['TBq', 1e12, 0, 0, -1],
  ['Ci', 3.7e10, 0, 0, -1],
  ['mCi', 3.7e7, 0, 0, -1],
  ['µCi μCi', 3.7e4, 0, 0, -1],
  ['ACH', 1 / 3600, 0, 0, -1],
  ['rpm', 1 / 60, 0, 0, -1],
  ['kg', 1, 0, 1],
  ['g', 1e-3, 0, 1],
  ['mg', 1e-6, 0, 1],
  ['µg μg', 1e-9, 0, 1],
  ['t tonne', 1000, 0, 1],
  ['lb lbm', pound, 0, 1],
  ['oz', pound / 16, 0, 1],
  ['ton', 2000 * pound, 0, 1],
  ['slug', force / foot, 0, 1],
  ['K Δ∘C', 1, 0, 0, 0, 1],
  ['Δ∘F', 5 / 9, 0, 0, 0, 1],
  ['N', 1, 1, 1, -2],
  ['kN', 1e3, 1, 1, -2],
  ['MN', 1e6, 1, 1, -2],
  ['kgf', gravity, 1, 1, -2],
  ['lbf', force, 1, 1, -2],
  ['kip kips', 1000 * force, 1, 1, -2],
  ['tonf', 2000 * force, 1, 1, -2],
  ['plf', force / foot, 0, 1, -2],
  ['klf', (1000 * force) / foot, 0, 1, -2],
  ['Pa', 1, -1, 1, -2],
  ['hPa mbar', 100, -1, 1, -2],
  ['kPa', 1e3, -1, 1, -2],
  ['MPa', 1e6, -1, 1, -2],
  ['GPa', 1e9, -1, 1, -2],
  ['bar', 1e5, -1, 1, -2],
  ['atm', 101325, -1, 1, -2],
  ['torr', 101325 / 760, -1, 1, -2],
  ['psi', force / inch ** 2, -1, 1, -2],
  ['ksi', (1000 * force) / inch ** 2, -1, 1, -2],
  ['psf', force / foot ** 2, -1, 1, -2],
  ['ksf', (1000 * force) / foot ** 2, -1, 1, -2],
  ['tsf', (2000 * force) / foot ** 2, -1, 1, -2],
  ['mmHg', mercury / 1000, -1, 1, -2],
  ['inHg', mercury * inch, -1, 1, -2],
  ['mmH2O', water / 1000, -1, 1, -2],
  ['inH2O', water * inch, -1, 1, -2],
  ['ftH2O', water * foot, -1, 1, -2],
  ['pcf', force / foot ** 3, -2, 1, -2],
  ['kcf', (1000 * force) / foot ** 3, -2, 1, -2],
  ['pci', force / inch ** 3, -2, 1, -2],
  ['J', 1, 2, 1, -2],
  ['kJ', 1e3, 2, 1, -2],
  ['MJ', 1e6, 2, 1, -2],
  ['GJ', 1e9, 2, 1, -2],
  ['Wh', 3600, 2, 1, -2],
  ['kWh', 3.6e6, 2, 1, -2],
  ['MWh', 3.6e9, 2, 1, -2],
  ['cal', 4.184, 2, 1, -2],
  ['kcal', 4184, 2, 1, -2],
  ['Btu', 1055.05585262, 2, 1, -2],
  ['eV', 1.602176634e-19, 2, 1, -2],
  ['keV', 1.602176634e-16, 2, 1, -2],
  ['MeV', 1.602176634e-13, 2, 1, -2],
  ['W VA', 1, 2, 1, -3],
  ['mW', 1e-3, 2, 1, -3],
  ['kW kVA', 1e3, 2, 1, -3],
  ['MW', 1e6, 2, 1, -3],
  ['hp', 550 * force * foot, 2, 1, -3],
  ['cfm', foot ** 3 / 60, 3, 0, -1],
  ['cfs', foot ** 3, 3, 0, -1],
  ['gpm', (231 * inch ** 3) / 60, 3, 0, -1],
  ['mph', (5280 * foot) / 3600, 1, 0, -1],
  ['A', 1, 0, 0, 0, 0, 1],
  ['mA', 1e-3, 0, 0, 0, 0, 1],
  ['kA', 1e3, 0, 0, 0, 0, 1],
  ['Ah', 3600, 0, 0, 1, 0, 1],
  ['mAh', 3.6, 0, 0, 1, 0, 1],
  ['C', 1, 0, 0, 1, 0, 1],
  ['V', 1, 2, 1, -3, 0, -1],
  ['mV', 1e-3, 2, 1, -3, 0, -1],
  ['kV', 1e3, 2, 1, -3, 0, -1],
  ['Ω', 1, 2, 1, -3, 0, -2],
  ['mΩ', 1e-3, 2, 1, -3, 0, -2],
  ['kΩ', 1e3, 2, 1, -3, 0, -2],
  ['F', 1, -2, -1, 4, 0, 2],
  ['mol', 1, 0, 0, 0, 0, 0, 1],
  ['kmol', 1e3, 0, 0, 0, 0, 0, 1],
  ['mmol', 1e-3, 0, 0, 0, 0, 0, 1],
  ['cd lm', 1, 0, 0, 0, 0, 0, 0, 1],
  ['lx', 1, -2, 0, 0, 0, 0, 0, 1],
  ['Gy', 1, 2, 0, -2],
  ['mGy', 1e-3, 2, 0, -2],
  ['µGy μGy', 1e-6, 2, 0, -2],
  ['cGy', 0.01, 2, 0, -2],
  ['Sv', 1, 0, 0, 0, 0, 0, 0, 0, 0, 1],
  ['mSv', 1e-3, 0, 0, 0, 0, 0, 0, 0, 0, 1],
  ['µSv μSv', 1e-6, 0, 0, 0, 0, 0, 0, 0, 0, 1],
  ['rem', 0.01, 0, 0, 0, 0, 0, 0, 0, 0, 1],
  ['mrem', 1e-5, 0, 0, 0, 0, 0, 0, 0, 0, 1],
  ['R', 2.58e-4, 0, -1, 1, 0, 1],
  ['mR', 2.58e-7, 0, -1, 1, 0, 1],
]

const table = new Map<string, Amount>(
  rows.flatMap(([names, value, ...exponents]) =>
    names
      .split(' ')
      .map((name): [string, Amount] => [name, { value, exponents: padded(exponents), units: !isAngle(name) }]),
  ),
)

/** A unit as printed, as an amount; undefined where the pencil knows none of that name. */
export function pencilUnit(name: string): Amount | undefined {
  return table.get(name)
}

/** Degrees of temperature on a scale, printed after a raised ring: kelvin = value * factor + offset. */
export const scales: ReadonlyMap<string, { readonly factor: number; readonly offset: number }> = new Map([
  ['C', { factor: 1, offset: 273.15 }],
  ['F', { factor: 5 / 9, offset: (459.67 * 5) / 9 }],
])

/** An angle or a per cent does not make a line one with units: its other numbers may still be bare. */
function isAngle(name: string): boolean {
  return ['∘', '°', 'rad', 'mrad', '%', '‰', 'ppm', 'ppb'].includes(name)
}

function padded(exponents: readonly number[]): readonly number[] {
  return Array.from({ length: 9 }, (_, index) => exponents[index] ?? 0)
}
