import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { sectionMethod } from './flexure-section.ts'
import { strainSteps } from './flexure-strain.ts'

const [top, crushing, foot] = [0.002, 0.003, 0.0038]

/** Hognestad's curve: a parabola to 0.002, then straight down to 85 % at 0.0038. */
const shape = (strain: number): number => {
  const share = strain / top
  return share <= 1 ? 2 * share - share * share : 1 - (0.15 * (strain - top)) / (foot - top)
}

/** The section by plane strains and Hognestad's curve, the concrete crushing at 0.003. Refuses what `sectionMethod` refuses. */
export const flexureAci318Section = sectionMethod(
  {
    id: 'flexure-aci-318-section',
    title: 'Plane strains, curve of Hognestad',
    says: "Stresses integrated over the compressed depth (Gauss-Legendre, 16 places each on parabola and falling line); the neutral axis where the forces balance, by Brent's method; concrete 0.003 at the edge with a peak of `0.85 * f_c`, steel straight to yield, then level.",
  },
  { concrete: 'f_c', steel: 'f_y' },
  { turns: [top, crushing], shape, peak: 0.85, yields: 1 },
)

/** Plane strains and integrated stresses in place of the rectangular block. */
export const flexureAci318Second: Second = {
  title: 'Plane strains and integrated stresses',
  says: 'The rectangular block is left aside: a measured curve of concrete is integrated over the section and the neutral axis is found where the forces balance; the strength reduction factor of 0.9 is the same.',
  steps: strainSteps({
    method: flexureAci318Section,
    takes: { b: 'width', d: 'd', area: 'A_s', f_c: 'f_c', f_y: 'f_y' },
    source: cite('hognestad'),
    perWidth: '0.9 * M_strain / width',
    says: 'with the strength reduction factor, per width',
  }),
  compare: [
    {
      first: 'M_R',
      second: 'M_R_strain',
      band: 0.02,
      says: 'the block stands for the curve: the lever arm hardly knows the difference',
      when: { formula: 'epsilon_t >= epsilon_y + 0.003' },
    },
    {
      first: 'M_R',
      second: 'M_R_strain',
      band: 0.6,
      says: 'too much steel: the code stops short of it, the strains carry more',
      when: { formula: 'epsilon_t < epsilon_y + 0.003' },
    },
  ],
}
