import { parabolaAndPlateau, sectionMethod } from './flexure-section.ts'

/**
 * The section by plane strains and the laws of IS 456 cl. 38.1: concrete 0.0035 at its edge, parabola to 0.002, then the plateau
 * 0.67 f_ck / 1.5; steel straight to 0.87 f_y, then level. Refuses what `sectionMethod` refuses.
 */
export const flexureIs456Section = sectionMethod(
  {
    id: 'flexure-is-456-section',
    title: 'Plane strains, parabola and plateau',
    says: "Stresses integrated over the compressed depth (Gauss-Legendre, 16 places each on parabola and plateau); the neutral axis where the forces balance, by Brent's method; concrete 0.0035 at the edge, steel straight to `0.87 * f_y`, then level.",
  },
  { concrete: 'f_ck', steel: 'f_y' },
  { turns: [0.002, 0.0035], shape: parabolaAndPlateau(0.002), peak: 0.67 / 1.5, yields: 0.87 },
)
