import { defineModule, type PublishedCase } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, limit, quantity } from '../words.ts'
import { anchorageAci318Steps, steelGrades } from './anchorage-aci-318-steps.ts'
import { anchorageCautions, lappedUpTo, lengthsGiven } from './anchorage-parts.ts'
import { barInput, size, strength } from './bar-steps.ts'

const aci = (at: string) => cite('aci-318', at)

const base = {
  grade: 'Grade 60',
  f_c: '4000 psi',
  casting: 'bottom',
  end: 'straight',
  lap_class: 'class B',
  cover: '2 in',
  spacing: '8 in',
  available: '60 in',
}
const worked = (id: string, bar_size: string, printed: string): PublishedCase => ({
  id,
  source: 'ACI 318-19, Table 25.4.2.3, 4000 psi, Grade 60, bottom bars, worked from the table',
  status: 'memory',
  says: `${bar_size}, bars apart`,
  inputs: { ...base, bar_size },
  answers: { l_d: printed },
})

/** Development length, hook and laps of a bar in tension by ACI 318-19, 25.4 and 25.5. */
export const anchorageAci318 = defineModule({
  id: 'anchorage-aci-318',
  version: '1.0.1',
  title: 'Anchorage and laps by ACI 318',
  asks: 'Does this bar reach far enough past the section to yield, and how long is its lap?',
  code: 'ACI 318-19',
  inputs: {
    bar_size: barInput,
    grade: choice({ says: 'grade of the bar', words: steelGrades }),
    f_c: quantity('stress', {
      says: 'specified cylinder strength of the concrete',
      symbol: "f_c'",
      unit: strength,
      least: '2500 psi',
      most: '10000 psi',
      source: aci('25.4.1.4'),
    }),
    casting: choice({
      says: 'casting position',
      words: { top: 'more than 12 in of fresh concrete below a level bar', bottom: 'less, or an upright bar' },
    }),
    cover: length({
      says: 'clear cover to the bar',
      symbol: 'c',
      unit: size,
      above: '0 mm',
      usual: ['0.75 in', '4 in'],
    }),
    spacing: length({
      says: 'spacing of the bars that are anchored or lapped, centre to centre',
      symbol: 's',
      unit: size,
      above: '0 mm',
      usual: ['3 in', '18 in'],
    }),
    end: choice({ says: 'end of the bar', words: { straight: 'no bend', hooked: 'standard hook of 25.3.1' } }),
    lap_class: choice({
      says: 'class of the lap',
      words: {
        'class A': 'twice the steel needed, and at most half of the bars lapped in one place',
        'class B': 'all others',
      },
    }),
    ...lengthsGiven,
  },
  steps: anchorageAci318Steps,
  results: ['l_d', 'l_st'],
  covers: ['anchorage'],
  drawing: ['l_d', 'l_st'],
  limits: [
    limit('spacing - phi >= max(phi, 1 in)', {
      says: 'the clear distance of the bars is at least a diameter and an inch',
      otherwise: 'refuse',
      on: 'spacing',
      source: aci('25.2.1'),
    }),
    limit('cover >= 0.5 * phi', {
      says: 'the cover is at least half the diameter',
      otherwise: 'refuse',
      on: 'cover',
      source: aci('R25.4.2.4'),
    }),
    lappedUpTo('phi <= 1.41 in', {
      says: 'bars that are lapped are No. 11 or smaller',
      advice: 'Couple larger bars',
      source: aci('25.5.1.1'),
    }),
    limit('phi <= 1.41 in', {
      says: 'bars with hooks are No. 11 or smaller',
      when: { choice: 'end', is: ['hooked'] },
      advice: 'Hooks of larger bars have other factors',
      otherwise: 'refuse',
      on: 'bar_size',
      source: aci('Table 25.4.3.2'),
    }),
  ],
  cautions: [
    ...anchorageCautions,
    'Tension, uncoated bars, normal-weight concrete; steel beyond what is needed shortens nothing here. Coated bars need more.',
    {
      says: 'The hook is taken with a side cover of six diameters, as inside a slab or wall; at a free edge it needs a quarter more.',
      when: { choice: 'end', is: ['hooked'] },
    },
  ],
  published: [
    worked('anch-7', 'No. 8', '47.4 in'),
    worked('anch-8', 'No. 5', '23.7 in'),
    {
      id: 'anch-9',
      source: 'ACI 318-19, 25.4.3.1, No. 8, 4000 psi, Grade 60, worked apart: 60000 times 0.8667 over 55 times 63.25',
      status: 'computed',
      says: 'standard hook, hooks six diameters apart',
      inputs: { ...base, bar_size: 'No. 8', end: 'hooked' },
      answers: { l_dh: '14.95 in' },
    },
  ],
  example: { ...base, bar_size: 'No. 5', available: '26 in', lap_planned: '32 in' },
})
