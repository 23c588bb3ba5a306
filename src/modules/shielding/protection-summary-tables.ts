import { cite } from '../sources.ts'
import { table } from '../table.ts'

/** Published least or aimed-at protection factors. */
export const publishedFactors = {
  'adequate shelter': 'adequate shelter after a detonation, US planning guidance (from memory)',
  'marked shelter': 'marked public fallout shelter of the US national programme (from memory)',
  'ten halvings': 'the aim of Kearny, ten halvings and more (read in guides that quote it)',
} as const

/** Published reference doses. */
export const publishedDoses = {
  'public, one year': 'member of the public in a controlled area, one year',
  'emergency worker': 'emergency worker, all duties',
  'valuable property': 'emergency worker protecting valuable property',
  'life saving': 'emergency worker saving life or protecting many people',
  'worker, one year': 'occupational limit of an adult, one year',
} as const

export const factorTable = table(
  {
    title: 'Published protection factors',
    source: cite('protection-references', 'factors'),
    status: 'ten halvings: read in guides that quote it; the other two from memory',
    unit: '',
    row: { kind: 'words', says: 'published figure', keys: Object.keys(publishedFactors) },
  },
  '10\n40\n1000',
)

export const doseTable = table(
  {
    title: 'Published reference doses',
    source: cite('protection-references', 'doses'),
    status: 'yearly limits: looked up; those of emergency workers: read in pages that quote the manual',
    unit: 'mSv',
    row: { kind: 'words', says: 'published figure', keys: Object.keys(publishedDoses) },
  },
  '1\n50\n100\n250\n50',
)
