import type { CaseInput, PublishedCase } from '../module.ts'

const room = (more: Readonly<Record<string, CaseInput>>): Readonly<Record<string, CaseInput>> => ({
  volume: '60 m^3',
  generation: '10 * 0.0052 L/s',
  leakage: '0 m^3/hr',
  wanted: '9.4872 hr',
  co2_start: '0.04 percent',
  co2_limit: '3 percent',
  oxygen_limit: '16 percent',
  quotient: '0.83',
  gain: '1000 W',
  area: '100 m^2',
  start_temperature: '20 degC',
  temperature_limit: '29 degC',
  thickness: '1 m',
  ...more,
})

/** A rule of the trade, and closed forms worked apart. */
export const closedUpCases: readonly PublishedCase[] = [
  {
    id: 'C1',
    source:
      'US naval and Army rule of thumb: 0.04 h for each cubic foot and person to 3 %, with 0.75 ft³/h given off by each',
    status: 'memory',
    says: '1000 ft³ and ten people: 4.0 h',
    inputs: room({ volume: '1000 ft^3', generation: '7.5 ft^3/hr', co2_start: '0' }),
    answers: { t_c: '4.0 hr' },
  },
  {
    id: 'C2',
    source: 'Closed form of the sealed room; the oxygen with a quotient of 0.83',
    status: 'computed',
    says: '60 m³, ten people at 0.0052 L/s, from 0.04 % to 3 %',
    inputs: room({}),
    answers: { t_c: '9.487 hr', o_w: '17.384 percent' },
  },
  {
    id: 'C3',
    source: 'Closed form of the room with fresh air, 3 cfm for each of ten people',
    status: 'computed',
    says: 'the same with 30 cfm, to 0.3 %',
    inputs: room({ leakage: '30 cfm', co2_limit: '0.3 percent', wanted: '1 hr' }),
    answers: { t_c: '1.4488 hr', c_s: '0.40727 percent', t_a: '1.1772 hr' },
  },
  {
    id: 'C5',
    source:
      'Carslaw and Jaeger, Conduction of heat in solids, constant flux into a half space (form from memory), 10 W/m² for 24 h into concrete, by hand',
    status: 'computed',
    says: 'rise of the face of the wall, and the time to the rise allowed',
    inputs: room({ wanted: '24 hr', co2_limit: '4 percent', temperature_limit: '24.27776 degC' }),
    answers: { dT_s: '1.5139 K', dT_f: '1.25 K', t_h: '96.00 hr' },
    tolerance: { relative: 0.0005 },
  },
]
