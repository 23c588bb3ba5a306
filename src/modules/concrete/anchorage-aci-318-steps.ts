import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'
import { look, step, when } from '../words.ts'
import { checkAnchored, checkLap } from './anchorage-parts.ts'
import { diameterStep, size, strength } from './bar-steps.ts'

const aci = (at: string) => cite('aci-318', at)
/** Grades of bars, with their yield strength. */
export const steelGrades = {
  'Grade 40': '40 000 psi',
  'Grade 60': '60 000 psi',
  'Grade 80': '80 000 psi',
  'Grade 100': '100 000 psi',
} as const
const grade: Axis = { kind: 'words', says: 'grade of the bar', keys: Object.keys(steelGrades) }
const status = 'from memory of the standard'

const yieldStress = table(
  { title: 'Yield strength', source: aci('20.2.2.4'), status, unit: 'psi', row: grade },
  '40000 \n 60000 \n 80000 \n 100000',
)
const gradeFactor = table(
  { title: 'Factor for the grade', source: aci('Table 25.4.2.5'), status, unit: '', row: grade },
  '1.0 \n 1.0 \n 1.15 \n 1.3',
)

const divisor = (formula: string): Step =>
  step('k_d', formula, {
    says: 'divisor for size and spacing of the bars',
    symbol: 'k_sp',
    source: aci('Table 25.4.2.3'),
  })
const bySize = (says: string, small: string, large: string): Step =>
  when({ formula: 'phi <= 0.75 in' }, { says, yes: [divisor(small)], no: [divisor(large)] })
const small = 'the bar is No. 6 or smaller'

const hook: readonly Step[] = [
  step('psi_c', 'min(f_c / (15000 psi) + 0.6, 1.0)', {
    says: 'factor for the strength of the concrete',
    source: aci('Table 25.4.3.2'),
  }),
  when(
    { formula: 'spacing >= 6 * phi' },
    {
      says: 'the hooks stand at least six diameters apart',
      yes: [step('psi_r', '1.0', { says: 'factor for the spacing of hooks', source: aci('Table 25.4.3.2') })],
      no: [step('psi_r', '1.6', { says: 'factor for the spacing of hooks', source: aci('Table 25.4.3.2') })],
    },
  ),
  step(
    'l_dh',
    'max(f_y * psi_r * psi_c / (55 * sqrt(f_c / (1 psi)) * (1 psi)) * (phi / (1 in))^1.5 * (1 in), 8 * phi, 6 in)',
    {
      says: 'development length of the hook',
      unit: size,
      source: aci('25.4.3.1'),
    },
  ),
  checkAnchored('available >= l_dh', aci('25.4.3.1')),
]

/** From the bar and its place to development length, hook and lap. */
export const anchorageAci318Steps: readonly Step[] = [
  diameterStep,
  look('f_y', yieldStress, { row: 'grade', says: 'yield strength of the bar', unit: strength }),
  look('psi_g', gradeFactor, { row: 'grade', says: 'factor for the grade' }),
  when(
    { choice: 'casting', is: ['top'] },
    {
      yes: [step('psi_t', '1.3', { says: 'factor for the casting position', source: aci('Table 25.4.2.5') })],
      no: [step('psi_t', '1.0', { says: 'factor for the casting position', source: aci('Table 25.4.2.5') })],
    },
  ),
  when(
    { formula: 'spacing - phi >= 2 * phi and cover >= phi' },
    {
      says: 'the bars lie two diameters apart, with a cover of one',
      yes: [bySize(small, '25', '20')],
      no: [bySize(small, '50 / 3', '40 / 3')],
    },
  ),
  step('l_d', 'max(f_y * psi_t * psi_g / (k_d * sqrt(f_c / (1 psi)) * (1 psi)) * phi, 12 in)', {
    says: 'development length of the straight bar',
    unit: size,
    source: aci('25.4.2.1, Table 25.4.2.3'),
  }),
  when({ choice: 'end', is: ['straight'] }, { yes: [checkAnchored('available >= l_d', aci('25.4.2.1'))], no: hook }),
  when(
    { choice: 'lap_class', is: ['class A'] },
    {
      yes: [step('l_st', 'max(1.0 * l_d, 12 in)', { says: 'lap needed', unit: size, source: aci('Table 25.5.2.1') })],
      no: [step('l_st', 'max(1.3 * l_d, 12 in)', { says: 'lap needed', unit: size, source: aci('Table 25.5.2.1') })],
    },
  ),
  checkLap('lap_planned >= l_st', aci('25.5.2.1')),
]
