import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { flexureIs456Section } from './flexure-is-456-section.ts'
import { strainComparisons, strainSteps } from './flexure-strain.ts'

/** Plane strains and integrated stresses in place of the formulas of Annex G. */
export const flexureIs456Second: Second = {
  title: 'Plane strains and integrated stresses',
  says: 'The stress and strain laws of IS 456 cl. 38.1 are integrated over the section and the neutral axis is found where the forces balance. Steel is taken straight to its design stress, 0.87 of its strength, and level beyond, for deformed bars as well: their curved start lies below the strains of an under-reinforced section.',
  steps: strainSteps({
    method: flexureIs456Section,
    takes: { b: 'width', d: 'd', area: 'A_st', f_ck: 'f_ck', f_y: 'f_y' },
    source: cite('is-456', 'cl. 38.1, Fig. 21 to 23'),
    perWidth: 'M_strain / width',
    says: 'the same, per width',
  }),
  compare: strainComparisons({
    axis: 'x_u',
    limit: 'x_max',
    moment: 0.005,
    depth: 0.01,
    says: 'Annex G rounds the integrals of the stress block to 0.36 and 0.42 (0.3616 and 0.4160)',
  }),
}
