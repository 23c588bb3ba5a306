import { defineModule, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { table } from '../table.ts'
import { check, choice, length, limit, look, step } from '../words.ts'
import { size, strength } from './bar-steps.ts'
import { crackCautions, crackedSection, crackInputs, crackLimits, stripSteps } from './crack-width-parts.ts'
import { cubeStrength } from './is456-concrete.ts'
import { steelWords, yieldStrength } from './is456-steel.ts'

const is = (at: string) => cite('is-456', at)
const exposures = {
  sheltered: 'cracks do no harm and the concrete is dry',
  'soil or water': 'moisture, or contact with soil or ground water',
  severe: 'exposure severe, very severe or extreme',
} as const

const allowedWidth = table(
  {
    title: 'Crack width allowed at the surface',
    source: is('cl. 35.3.2'),
    status: 'from memory of the standard',
    unit: 'mm',
    row: { kind: 'words', says: 'exposure', keys: Object.keys(exposures) },
  },
  '0.3 \n 0.2 \n 0.1',
)

const steps: readonly Step[] = [
  ...stripSteps,
  look('f_y', yieldStrength, { row: 'steel', says: 'characteristic strength of the steel', unit: strength }),
  step('E_s', '200000 MPa', { says: 'modulus of the steel', unit: strength, source: is('cl. 5.6.3') }),
  step('E_c', '5000 * sqrt(f_ck / (1 MPa)) * (1 MPa)', {
    says: 'modulus of the concrete',
    unit: strength,
    source: is('cl. 6.2.3.1'),
  }),
  step('n', 'E_s / (E_c / 2)', {
    says: 'modular ratio, the concrete halved for creep',
    source: is('Annex F'),
  }),
  ...crackedSection('n * A_s / (width * d)', 'f_s', is('Annex F')),
  step('eps_1', 'f_s / E_s * (thickness - x) / (d - x)', {
    symbol: 'epsilon_1',
    says: 'strain at the surface, the concrete in tension left out',
    source: is('Annex F'),
  }),
  step('eps_ct', '(1 MPa) * width * (thickness - x)^2 / (3 * E_s * A_s * (d - x))', {
    symbol: 'epsilon_ct',
    says: 'strain that the concrete between cracks takes away',
    source: is('Annex F'),
  }),
  step('eps_m', 'max(eps_1 - eps_ct, 0)', {
    symbol: 'epsilon_m',
    says: 'mean strain at the surface',
    source: is('Annex F'),
  }),
  step('a_cr', 'sqrt((spacing / 2)^2 + (cover + bar_size / 2)^2) - bar_size / 2', {
    says: 'from the surface midway between bars to the nearest bar',
    unit: size,
    source: is('Annex F'),
  }),
  step('w_cr', '3 * a_cr * eps_m / (1 + 2 * (a_cr - cover) / (thickness - x))', {
    says: 'crack width at the surface',
    unit: size,
    source: is('Annex F'),
  }),
  look('w_max', allowedWidth, { row: 'exposure', says: 'crack width allowed', unit: size }),
  check('width_kept', 'w_cr <= w_max', { says: 'crack width against the limit', source: is('cl. 35.3.2') }),
]

/** Crack width of a bent strip by IS 456 Annex F, against the limit of its exposure. */
export const crackWidthIs456 = defineModule({
  id: 'crack-width-is-456',
  version: '1.0.1',
  title: 'Crack width by IS 456',
  asks: 'How wide do the cracks of this slab or wall open under load, and is that within the limit?',
  code: 'IS 456:2000',
  inputs: {
    ...crackInputs,
    thickness: length({ says: 'overall depth', symbol: 'D', unit: size, above: '0 mm', usual: ['150 mm', '1.5 m'] }),
    f_ck: cubeStrength('55 MPa'),
    steel: choice({ says: 'grade of the bars', words: steelWords }),
    exposure: choice({ says: 'exposure of the face', words: exposures }),
  },
  steps,
  results: ['w_cr', 'f_s', 'x', 'eps_m', 'a_cr', 'w_max'],
  covers: ['cracking'],
  drawing: ['thickness', 'cover', 'bar_size', 'spacing', 'w_max'],
  limits: [
    ...crackLimits,
    limit('f_s <= 0.8 * f_y', {
      says: 'the steel stays below 0.8 of its characteristic strength',
      advice: 'Beyond it Annex F gives no width: give the section more steel',
      otherwise: 'refuse',
      on: 'moment',
      source: is('Annex F'),
    }),
  ],
  cautions: [
    ...crackCautions,
    'The width is that of a load that stays, at the point of the surface farthest from the bars. The strength is that of cubes.',
    {
      says: 'The mean strain is nil: by Annex F the section is uncracked under this moment.',
      when: { formula: 'eps_1 <= eps_ct' },
    },
  ],
  published: [
    {
      id: 'crack-3',
      source: 'IS 456:2000, Annex F, worked apart',
      status: 'computed',
      says: 'slab of 300 mm, cover 45 mm, bars of 16 mm at 150 mm, M30',
      inputs: {
        moment: '60 kN*m/m',
        thickness: '300 mm',
        cover: '45 mm',
        bar_size: '16 mm',
        spacing: '150 mm',
        f_ck: '30 MPa',
        steel: 'Fe 500',
        exposure: 'soil or water',
      },
      answers: {
        n: '14.61',
        x: '80.7 mm',
        f_s: '203.4 MPa',
        eps_1: '0.001341',
        eps_m: '0.0009813',
        a_cr: '83.8 mm',
        w_cr: '0.182 mm',
      },
    },
    {
      id: 'crack-7',
      source:
        'SP 16:1980, Table 91, elastic section: neutral axis at 0.358 of the depth where ratio of moduli by steel is 10 %',
      status: 'memory',
      says: 'M25, effective depth 1 m, `6250 mm^2/m`: depth of the neutral axis only',
      inputs: {
        moment: '400 kN*m/m',
        thickness: '1062.5 mm',
        cover: '50 mm',
        bar_size: '25 mm',
        spacing: 'pi / 4 * (25 mm)^2 / (6.25 mm)',
        f_ck: '25 MPa',
        steel: 'Fe 500',
        exposure: 'soil or water',
      },
      answers: { n: '16.0', x: '358 mm' },
    },
  ],
  example: {
    moment: '45 kN*m/m',
    thickness: '300 mm',
    cover: '45 mm',
    bar_size: '16 mm',
    spacing: '150 mm',
    f_ck: '30 MPa',
    steel: 'Fe 500',
    exposure: 'soil or water',
  },
})
