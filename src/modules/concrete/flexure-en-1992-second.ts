import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { parabolaAndPlateau, sectionMethod } from './flexure-section.ts'
import { strainComparisons, strainSteps } from './flexure-strain.ts'

/** The section by plane strains and the parabola and rectangle of EN 1992-1-1, to C50. Refuses what `sectionMethod` refuses. */
export const flexureEn1992Section = sectionMethod(
  {
    id: 'flexure-en-1992-section',
    title: 'Plane strains, parabola and rectangle',
    says: "Stresses integrated over the compressed depth (Gauss-Legendre, 16 places each on parabola and rectangle); the neutral axis where the forces balance, by Brent's method; concrete 0.0035 at the edge, parabola to 0.002, steel straight to its design strength, then level.",
  },
  { concrete: 'f_cd', steel: 'f_yd' },
  { turns: [0.002, 0.0035], shape: parabolaAndPlateau(0.002), peak: 1, yields: 1 },
)

/** Plane strains and integrated stresses in place of the rectangular block. */
export const flexureEn1992Second: Second = {
  title: 'Plane strains and integrated stresses',
  says: 'The parabola and rectangle of 3.1.7(1) are integrated over the section and the neutral axis is found where the forces balance; the rectangular block is not used.',
  steps: strainSteps({
    method: flexureEn1992Section,
    takes: { b: 'width', d: 'd', area: 'A_s', f_cd: 'f_cd', f_yd: 'f_yd' },
    source: cite('en-1992-1-1', '3.1.7(1), 3.2.7(2)'),
    perWidth: 'M_strain / width',
    says: 'the same, per width',
  }),
  compare: strainComparisons({
    axis: 'x',
    limit: 'x_max',
    moment: 0.01,
    depth: 0.015,
    says: 'block and parabola stand for one curve: their mean stress differs by 1 %',
  }),
}
