import { unitNames } from './units.ts'

// biome-ignore format: a dense table reads better than one word a line
/** What people write for a unit of the list. */
const meant: Readonly<Record<string, string>> = {
  h: 'hr', hrs: 'hr', hour: 'hr', hours: 'hr', d: 'day', days: 'day', sec: 's', secs: 's', second: 's', seconds: 's', mins: 'min', minute: 'min',
  minutes: 'min', a: 'yr', year: 'yr', years: 'yr', yrs: 'yr', wk: 'week', weeks: 'week', t: 'tonne', te: 'tonne', tonnes: 'tonne', tons: 'ton',
  l: 'L', lt: 'L', ltr: 'L', litre: 'L', liter: 'L', litres: 'L', liters: 'L', ml: 'mL', cc: 'mL', gallon: 'gal', gallons: 'gal', cl: 'mL',
  lbs: 'lb', pound: 'lb', pounds: 'lb', lbsf: 'lbf', kips: 'kip', k: 'kip', tf: 'kgf', kg_f: 'kgf', metre: 'm', meter: 'm', metres: 'm',
  meters: 'm', inch: 'in', inches: 'in', foot: 'ft', feet: 'ft', yard: 'yd', yards: 'yd', mile: 'mi', miles: 'mi', hectare: 'ha', acres: 'acre',
  m2: 'm^2', m3: 'm^3', m4: 'm^4', mm2: 'mm^2', mm3: 'mm^3', mm4: 'mm^4', cm2: 'cm^2', cm3: 'cm^3', in2: 'in^2', in3: 'in^3', in4: 'in^4',
  ft2: 'ft^2', ft3: 'ft^3', yd3: 'yd^3', sqm: 'm^2', cum: 'm^3', sqft: 'ft^2', sf: 'ft^2', cuft: 'ft^3', cf: 'ft^3', cuyd: 'yd^3', cy: 'yd^3',
  sqin: 'in^2', kNm: 'kN*m', Nm: 'N*m', kip_ft: 'kip*ft', kipft: 'kip*ft', ft_lbf: 'ft*lbf', kph: 'km/hr', kmh: 'km/hr', kmph: 'km/hr',
  fps: 'ft/s', fpm: 'ft/min', lps: 'L/s', LPS: 'L/s', lpm: 'L/min', cfs: 'ft^3/s', cms: 'm^3/s', pli: 'lbf/in', C: 'degC', F: 'degF',
  celsius: 'degC', fahrenheit: 'degF', dC: 'K', dF: 'delta_degF', R: 'roentgen', degrees: 'deg', degree: 'deg', radian: 'rad', radians: 'rad',
  pct: 'percent', rpm: '1/min, or rad/s for an angular speed', Ohm: 'ohm', ohms: 'ohm', amp: 'A', amps: 'A', volt: 'V', volts: 'V',
  watt: 'W', watts: 'W', joule: 'J', BTU: 'Btu', Cal: 'kcal', HP: 'hp', lm: 'lumen', lx: 'lux', cd: 'candela', persons: 'person',
  people: 'person', ppl: 'person', inWC: 'inH2O', inwg: 'inH2O', inWG: 'inH2O', mmWC: 'mmH2O', S: '1/ohm', gr: 'g', gm: 'g', kgs: 'kg', ksc: 'kgf/cm^2',
  micron: 'um', microns: 'um', mils: 'mil', bars: 'bar', degK: 'K', curie: 'Ci', becquerel: 'Bq', gray: 'Gy', sievert: 'Sv', torrs: 'torr',
}

/** The listed unit that a name outside the list most likely stands for, or undefined: a known habit, or only the case is wrong. */
export function unitMeant(name: string): string | undefined {
  if (Object.hasOwn(meant, name)) return meant[name]
  const alike = unitNames.filter(each => each.toLowerCase() === name.toLowerCase())
  return alike.length === 1 ? alike[0] : undefined
}
