import { defineModule, type PublishedCase } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, choiceLimit } from '../words.ts'
import { anchorageIs456Steps, barEnds, concreteGrades, lapPlaces } from './anchorage-is-456-steps.ts'
import { anchorageCautions, barDiameter, lappedUpTo, lengthsGiven, usedAtLap, usedStrength } from './anchorage-parts.ts'
import { steelWords } from './is456-steel.ts'

const is = (at: string) => cite('is-456', at)

const ten = { bar_size: '10 mm', force: 'bending', end: 'straight', lap_place: 'ordinary', available: '600 mm' }
const sheet = (id: string, concrete: string, steel: string, printed: string): PublishedCase => ({
  id,
  source: 'published design sheet to IS 456, development length in diameters',
  status: 'looked up',
  says: `${concrete}, ${steel}, tension, ten diameters of 10 mm`,
  inputs: { ...ten, concrete, steel },
  answers: { L_d: printed },
})

/** Development length and laps by IS 456, 26.2, against what the drawing gives. */
export const anchorageIs456 = defineModule({
  id: 'anchorage-is-456',
  version: '1.1.0',
  title: 'Anchorage and laps by IS 456',
  asks: 'Does this bar reach far enough past the section to hold its stress, and how long is its lap?',
  code: 'IS 456:2000',
  inputs: {
    bar_size: barDiameter,
    steel: choice({ says: 'grade of the bar', words: steelWords }),
    concrete: choice({ says: 'grade of concrete', words: concreteGrades }),
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
      words: barEnds,
    }),
    lap_place: choice({ says: 'place of the lap', words: lapPlaces }),
    lap_used: usedAtLap,
    ...lengthsGiven,
  },
  steps: anchorageIs456Steps,
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
    lappedUpTo('bar_size <= 36 mm', {
      says: 'bars that are lapped are of 36 mm or less',
      advice: 'Weld larger bars or couple them',
      source: is('cl. 26.2.5.1 a)'),
    }),
  ],
  cautions: [
    ...anchorageCautions,
    'Where the bars work at more than half of their strength, lap not more than half of them in one place; where all must be, make the lap longer than this or bind it with links (cl. 26.2.5).',
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
