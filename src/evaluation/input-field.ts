import type { Place } from '../diagnostic/diagnostic.ts'
import type { Row } from './plan-types.ts'

/** Which input of a block is being made ready, or which field of a row. */
export interface Field {
  readonly key: string
  readonly name: string
  readonly block: number
  readonly blockName: string
  readonly place: Place
  readonly row?: Row
}
