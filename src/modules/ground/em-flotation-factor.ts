import { cite } from '../sources.ts'
import { table } from '../table.ts'

/** Load conditions of EM 1110-2-2100. */
export const loadConditions = {
  usual: 'water that stands there most of the time, or comes back within ten years or so',
  unusual: 'water expected once or seldom in the life of the structure; stages of building',
  extreme: 'water that is highly unlikely in the life of the structure',
} as const

/** Required factor against flotation; one column of the manual serves normal and critical structures alike. */
export const flotationFactor = table(
  {
    title: 'Table 3-4, required factor of safety against flotation',
    source: cite('em-1110-2-2100', 'Table 3-4'),
    status: 'entries from memory; compare with the manual',
    unit: '',
    row: { kind: 'words', says: 'load condition', keys: Object.keys(loadConditions) },
  },
  `
  1.3
  1.2
  1.1
  `,
)
