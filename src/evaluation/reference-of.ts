import type { Citation } from '../modules/sources.ts'
import type { Reference } from './workings.ts'

/** The reference that a citation prints; nothing where there is none. */
export function referenceOf(source: Citation | undefined): { reference?: Reference } {
  return source ? { reference: { key: source.key, at: source.at } } : {}
}
