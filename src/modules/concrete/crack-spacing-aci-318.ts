import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { step } from '../words.ts'
import { size } from './bar-steps.ts'

/** Largest spacing `s_crack` of bars that control cracks; `cover` is the clear cover to them. */
export const aciCrackSpacing = (cover: string): readonly Step[] => [
  step('r_40', '40000 psi / (2 / 3 * f_y)', {
    says: 'reference stress over the steel stress in service',
    source: cite('aci-318', '24.3.2.1'),
  }),
  step('s_crack', `min(15 in * r_40 - 2.5 * ${cover}, 12 in * r_40)`, {
    says: 'largest spacing for crack control',
    unit: size,
    source: cite('aci-318', 'Table 24.3.2'),
  }),
]
