import type { Limit, Module } from '../module.ts'
import type { Citation } from '../sources.ts'
import { limit } from '../words.ts'
import { sectionLimits } from './section-limits.ts'

/** What the bending modules of all codes ask and answer. */
export const flexureAbout = {
  asks: 'What steel does this moment need, and what moment do these bars carry?',
  covers: ['bending', 'detailing'],
} as const satisfies Partial<Module>

/** Limits of a singly reinforced section: `moment` on the strip, `most` that it may take. */
export const flexureLimits = ({
  moment,
  most,
  source,
}: {
  readonly moment: string
  readonly most: string
  readonly source: Citation
}): readonly Limit[] => [
  ...sectionLimits('bar_size'),
  limit(`${moment} <= ${most}`, {
    says: 'the section carries the moment without compression steel',
    advice: 'Make it thicker, or the concrete stronger',
    otherwise: 'refuse',
    on: 'moment',
    source,
  }),
]

/** Cautions of the bending modules of more than one code. */
export const flexureCautions = {
  cylinders:
    'The strength is that of cylinders: a cube strength is about a quarter higher for the same concrete and must not be entered as it is.',
  face: 'One face and one direction are checked. Cover, layer and bars are those of the face that the moment puts in tension.',
  others:
    'Shear, crack width, deflection and anchorage each need their own check; at a buried or wet face crack width often asks for more steel than strength.',
  least: {
    says: 'Least steel governs here, not the moment: it does not make the section watertight.',
    when: { formula: 'A_min > A_req' },
  },
} as const
