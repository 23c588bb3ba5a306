import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'
import { look, step, when } from '../words.ts'
import { checkAnchored, checkLap } from './anchorage-parts.ts'
import { size, strength } from './bar-steps.ts'
import { steelWords, yieldStrength } from './is456-steel.ts'

const is = (at: string) => cite('is-456', at)
const status = 'from memory of the standard'
const words = (says: string, of: object): Axis => ({ kind: 'words', says, keys: Object.keys(of) })

/** Grades of concrete of the bond table. */
export const concreteGrades = {
  M20: 'cube strength 20 MPa',
  M25: 'cube strength 25 MPa',
  M30: 'cube strength 30 MPa',
  M35: 'cube strength 35 MPa',
  'M40 and over': 'cube strength 40 MPa and more',
} as const
/** Ends of a bar, and what they count for. */
export const barEnds = {
  straight: 'no bend',
  'bend of 90 degrees': 'counts as 8 diameters',
  'hook of 180 degrees': 'counts as 16 diameters',
} as const
/** Places of a lap that lengthen it. */
export const lapPlaces = {
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
    row: words('grade of concrete', concreteGrades),
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
    row: words('end of the bar', barEnds),
  },
  '0 \n 8 \n 16',
)
const placeFactor = table(
  {
    title: 'Factor of a lap for its place',
    source: is('cl. 26.2.5.1 c)'),
    status,
    unit: '',
    row: words('place of the lap', lapPlaces),
  },
  '1.0 \n 1.4 \n 2.0',
)

const length = (name: string, formula: string, says: string, at: string): Step =>
  step(name, formula, { says, unit: size, source: is(at) })

/** From bond stress to development length, straight length and lap. */
export const anchorageIs456Steps: readonly Step[] = [
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
  length('L_d_lap', 'bar_size * 0.87 * f_y * lap_used / (4 * tau_bd)', 'development length at the lap', 'cl. 26.2.1'),
  when(
    { choice: 'force', is: ['bending'] },
    {
      yes: [length('L_lap', 'k_p * max(L_d_lap, 30 * bar_size, 200 mm)', 'lap needed', 'cl. 26.2.5.1 c)')],
      no: [
        when(
          { choice: 'force', is: ['direct tension'] },
          {
            yes: [length('L_lap', 'k_p * max(2 * L_d_lap, 30 * bar_size, 200 mm)', 'lap needed', 'cl. 26.2.5.1 c)')],
            no: [length('L_lap', 'max(L_d_lap, 24 * bar_size)', 'lap needed', 'cl. 26.2.5.1 d)')],
          },
        ),
      ],
    },
  ),
  checkLap('lap_planned >= L_lap', is('cl. 26.2.5.1')),
]
