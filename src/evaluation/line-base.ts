import type { Line } from './workings.ts'

/** What a printed line of any kind has. */
export type Base = Pick<Line, 'id' | 'number' | 'says' | 'reference' | 'row' | 'place'>
