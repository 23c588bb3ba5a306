import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, label, length, list, quantity } from '../words.ts'
import { areas, flowRate, lengths, speeds } from './living-units.ts'
import { airExhausts, separationSources } from './separation-tables.ts'

const height = (says: string, symbol: string, note?: string) =>
  length({ says, symbol, unit: lengths, least: '0 m', most: '30 m', ...(note ? { note } : {}) })

/** What `vent-separation` asks for. */
export const ventSeparationInputs = {
  column: choice({
    says: 'column of the published distances',
    words: { metric: 'in metres', feet: 'in feet' },
  }),
  intake_height: height('mouth of the intake above the ground', 'z_i'),
  snow: height('depth of snow that may lie there', 'z_n'),
  flood: height('water above the ground that may stand there', 'z_f', '0 where none can'),
  wind: choice({
    says: 'which pipe the prevailing wind meets first',
    words: { intake: 'the intake stands upwind of the exhausts', exhaust: 'an exhaust stands upwind of the intake' },
  }),
  sources: list('openings and places that the intake is kept from, in any order', {
    least: 1,
    most: 20,
    fields: {
      source: label({ says: 'which', optional: true }),
      kind: choice({ says: 'what it is', words: separationSources }),
      apart: length({
        says: 'distance in plan from the intake',
        symbol: 'x_s',
        unit: lengths,
        least: '0 m',
        most: '500 m',
      }),
      mouth: length({
        says: 'its mouth above the ground',
        symbol: 'z_s',
        unit: lengths,
        least: '0 m',
        most: '50 m',
      }),
      exhaust_flow: quantity('flow', {
        says: 'air that leaves by it',
        note: 'Where an exhaust has none given, all of the air that is drawn in is taken to leave by it',
        symbol: 'Q_e',
        unit: flowRate,
        above: '0 m^3/s',
        most: '20 m^3/s',
        optional: true,
        when: { choice: 'kind', is: airExhausts },
      }),
      exhaust_speed: quantity('velocity', {
        says: 'speed at which it leaves away from the intake',
        note: 'Negative where it blows towards the intake',
        symbol: 'v_e',
        unit: speeds,
        least: '-10 m/s',
        most: '20 m/s',
        default: '0 m/s',
        when: { choice: 'kind', is: airExhausts },
        source: cite('ashrae-62', 'a mouth turned down or capped, from memory'),
      }),
    },
  }),
  intake_flow: quantity('flow', {
    says: 'air drawn in',
    symbol: 'Q_s',
    unit: flowRate,
    above: '0 m^3/s',
    most: '20 m^3/s',
  }),
  intake_area: quantity('area', {
    says: 'open area of the mouth of the intake',
    note: 'Of its screen less the wires',
    symbol: 'A_i',
    unit: areas,
    above: '0 m^2',
  }),
} satisfies Readonly<Record<string, Input>>
