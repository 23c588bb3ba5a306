import type { Input, Limit, Step } from '../module.ts'
import { cite } from '../sources.ts'
import { length, quantity, step } from '../words.ts'
import { barArea, size, strength } from './bar-steps.ts'
import { sectionLimits } from './section-limits.ts'

const stripMoment = { SI: 'kN*m', US: 'lbf*in' }

/** What both codes ask of the cracked strip; a moment under service load, nothing factored. */
export const crackInputs = {
  moment: quantity('moment_per_length', {
    says: 'bending moment under service load, per width',
    note: 'Nothing factored; its sign does not count. Cover, bars and spacing are those of the face in tension',
    symbol: 'M_s',
    unit: { SI: 'kN*m/m', US: 'lbf*ft/ft' },
  }),
  cover: length({
    says: 'clear cover to the bars that carry the moment',
    symbol: 'c',
    unit: size,
    least: '10 mm',
    usual: ['20 mm', '80 mm'],
  }),
  bar_size: length({
    says: 'diameter of the bars',
    symbol: 'phi',
    unit: size,
    above: '0 mm',
    usual: ['8 mm', '32 mm'],
  }),
  spacing: length({
    says: 'spacing of the bars, centre to centre',
    symbol: 's',
    unit: size,
    above: '0 mm',
    usual: ['75 mm', '300 mm'],
  }),
  width: length({
    says: 'width of the strip that is designed',
    symbol: 'b',
    unit: size,
    above: '0 mm',
    default: '1000 mm',
  }),
} satisfies Readonly<Record<string, Input>>

export const stripSteps: readonly Step[] = [
  step('d', 'thickness - cover - bar_size / 2', { says: 'effective depth', unit: size }),
  step('A_s', 'pi / 4 * bar_size^2 * width / spacing', { says: 'steel in tension on the strip', unit: barArea }),
  step('M_b', 'abs(moment) * width', { says: 'moment on the strip', unit: stripMoment }),
]

/** Depth of the neutral axis of the cracked elastic section for a modular ratio, and the stress in the steel. */
export const crackedSection = (ratio: string, stress: string, source: ReturnType<typeof cite>): readonly Step[] => [
  step('k_s', ratio, { says: 'modular ratio times steel ratio', symbol: 'n_rho' }),
  step('x', 'd * (sqrt(k_s^2 + 2 * k_s) - k_s)', {
    says: 'depth of the neutral axis, cracked and elastic',
    unit: size,
    source: cite('statics'),
  }),
  step(stress, 'M_b / (A_s * (d - x / 3))', { says: 'stress in the steel', unit: strength, source }),
]

export const crackLimits: readonly Limit[] = sectionLimits('bar_size')

export const crackCautions = [
  'Bending only, without thrust or tension, and without steel in compression: leaving out a thrust is on the safe side, leaving out a tension is not.',
  'Restraint, early cooling and shrinkage crack a wall cast on a raft before any load stands on it: they need their own check and often govern.',
  'A computed width is no promise of a dry room: membrane, joints and waterstops keep the water out.',
]
