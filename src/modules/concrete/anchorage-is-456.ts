import { defineModule, type PublishedCase, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'
import { choice, choiceLimit, limit, look, step, when } from '../words.ts'
import {
  anchorageCautions,
  barDiameter,
  checkAnchored,
  checkLap,
  lengthsGiven,
  usedStrength,
} from './anchorage-parts.ts'
import { size, strength } from './bar-steps.ts'
import { steelWords, yieldStrength } from './is456-steel.ts'

const is = (at: string) => cite('is-456', at)
const status = 'from memory of the standard'
const words = (says: string, of: object): Axis => ({ kind: 'words', says, keys: Object.keys(of) })

const grades = {
  M20: 'cube strength 20 MPa',
  M25: 'cube strength 25 MPa',
  M30: 'cube strength 30 MPa',
  M35: 'cube strength 35 MPa',
  'M40 and over': 'cube strength 40 MPa and more',
} as const
const ends = {
  straight: 'no bend',
  'bend of 90 degrees': 'counts as 8 diameters',
  'hook of 180 degrees': 'counts as 16 diameters',
} as const
const places = {
  ordinary: 'away from the top as cast and from corners, or cover of two diameters and more',
  'top or corner': 'top as cast or corner, cover below two diameters, or laps closer than 75 mm or six diameters',
  'top and corner': 'both',
} as const

const plainBond = table(
  {
    title: 'Design bond stress of plain bars in tension',
    source: is('cl. 26.2.1.1'),
    status: 'looked up in a design sheet to the standard',
    unit: 'MPa',
    row: words('grade of concrete', grades),
  },
  '1.2 \n 1.4 \n 1.5 \n 1.7 \n 1.9',
)
const deformedFactor = table(
  { title: 'Factor for deformed bars', source: is('cl. 26.2.1.1'), status, unit: '', row: words('steel', steelWords) },
  '1.0 \n 1.6 \n 1.6',
)
const endValue = table(
  {
    title: 'Anchorage value of the end, in diameters',
    source: is('cl. 26.2.2.1 b)'),
    status,
    unit: '',
    row: words('end of the bar', ends),
  },
  '0 \n 8 \n 16',
)
const placeFactor = table(
  {
    title: 'Factor of a lap for its place',
    source: is('cl. 26.2.5.1 c)'),
    status,
    unit: '',
    row: words('place of the lap', places),
  },
  '1.0 \n 1.4 \n 2.0',
)

const length = (name: string, formula: string, says: string, at: string): Step =>
  step(name, formula, { says, unit: size, source: is(at) })

const steps: readonly Step[] = [
  look('f_y', yieldStrength, { row: 'steel', says: 'characteristic strength of the steel', unit: strength }),
  look('tau_b', plainBond, { row: 'concrete', says: 'bond stress of plain bars', unit: strength }),
  look('k_d', deformedFactor, { row: 'steel', says: 'factor for deformed bars' }),
  when(
    { choice: 'force', is: ['compression'] },
    {
      yes: [
        step('tau_bd', '1.25 * k_d * tau_b', {
          says: 'design bond stress, in compression',
          unit: strength,
          source: is('cl. 26.2.1.1'),
        }),
      ],
      no: [step('tau_bd', 'k_d * tau_b', { says: 'design bond stress', unit: strength, source: is('cl. 26.2.1.1') })],
    },
  ),
  step('sigma_s', '0.87 * f_y * used', { says: 'stress in the bar', unit: strength, source: is('cl. 26.2.1') }),
  length('L_d', 'bar_size * sigma_s / (4 * tau_bd)', 'development length', 'cl. 26.2.1'),
  look('n_e', endValue, { row: 'end', says: 'what the end of the bar counts for, in diameters' }),
  length('L_req', 'max(L_d - n_e * bar_size, 0 mm)', 'straight length needed before the end', 'cl. 26.2.2.1'),
  checkAnchored('available >= L_req', is('cl. 26.2.1, 26.2.2.1')),
  look('k_p', placeFactor, { row: 'lap_place', says: 'factor of a lap for its place' }),
  when(
    { choice: 'force', is: ['bending'] },
    {
      yes: [length('L_lap', 'k_p * max(L_d, 30 * bar_size, 200 mm)', 'lap needed', 'cl. 26.2.5.1 c)')],
      no: [
        when(
          { choice: 'force', is: ['direct tension'] },
          {
            yes: [length('L_lap', 'k_p * max(2 * L_d, 30 * bar_size, 200 mm)', 'lap needed', 'cl. 26.2.5.1 c)')],
            no: [length('L_lap', 'max(L_d, 24 * bar_size)', 'lap needed', 'cl. 26.2.5.1 d)')],
          },
        ),
      ],
    },
  ),
  checkLap('lap_planned >= L_lap', is('cl. 26.2.5.1')),
]

const ten = { bar_size: '10 mm', force: 'bending', end: 'straight', lap_place: 'ordinary', available: '600 mm' }
const sheet = (id: string, concrete: string, steel: string, printed: string): PublishedCase => ({
  id,
  source: 'published design sheet to IS 456, development length in diameters',
  status: 'looked up',
  says: `${concrete}, ${steel}, tension; ten diameters of 10 mm make a tenth of a metre`,
  inputs: { ...ten, concrete, steel },
  answers: { L_d: printed },
})

/** Development length and laps by IS 456, 26.2, against what the drawing gives. */
export const anchorageIs456 = defineModule({
  id: 'anchorage-is-456',
  version: '1.0.0',
  title: 'Anchorage and laps by IS 456',
  asks: 'Does this bar reach far enough past the section to hold its stress, and how long is its lap?',
  code: 'IS 456:2000',
  inputs: {
    bar_size: barDiameter,
    steel: choice({ says: 'grade of the bar', words: steelWords }),
    concrete: choice({ says: 'grade of concrete', words: grades }),
    force: choice({
      says: 'what the bar does',
      words: {
        bending: 'tension of a bent section',
        'direct tension': 'tension through the whole section',
        compression: 'compression',
      },
    }),
    used: usedStrength,
    end: choice({
      says: 'end of the bar',
      words: ends,
    }),
    lap_place: choice({ says: 'place of the lap', words: places }),
    ...lengthsGiven,
  },
  steps,
  results: ['L_d', 'L_req', 'L_lap', 'tau_bd'],
  covers: ['anchorage'],
  drawing: ['bar_size', 'L_req', 'L_lap'],
  limits: [
    choiceLimit('end', ['straight'], {
      says: 'a bar in compression is anchored straight',
      when: { choice: 'force', is: ['compression'] },
      advice: 'Bends do not count in compression',
      otherwise: 'refuse',
      on: 'end',
      source: is('cl. 26.2.2.2'),
    }),
    limit('bar_size <= 36 mm', {
      says: 'bars that are lapped are of 36 mm or less',
      when: { given: 'lap_planned' },
      advice: 'Weld larger bars or couple them',
      otherwise: 'refuse',
      on: 'bar_size',
      source: is('cl. 26.2.5.1 a)'),
    }),
  ],
  cautions: [
    ...anchorageCautions,
    'Bends and hooks count for 4 diameters in each 45 degrees, 16 at most, and stand before a straight tail of at least 4 diameters.',
  ],
  published: [
    sheet('anch-5a', 'M20', 'Fe 415', '470.1 mm'),
    sheet('anch-5b', 'M25', 'Fe 415', '403.0 mm'),
    sheet('anch-5c', 'M30', 'Fe 415', '376.1 mm'),
    sheet('anch-5d', 'M40 and over', 'Fe 415', '296.9 mm'),
    sheet('anch-6a', 'M20', 'Fe 500', '566.4 mm'),
    sheet('anch-6b', 'M25', 'Fe 500', '485.5 mm'),
    sheet('anch-6c', 'M30', 'Fe 500', '453.1 mm'),
  ],
  example: {
    bar_size: '12 mm',
    steel: 'Fe 500',
    concrete: 'M30',
    force: 'bending',
    end: 'bend of 90 degrees',
    lap_place: 'ordinary',
    available: '460 mm',
    lap_planned: '600 mm',
  },
})
