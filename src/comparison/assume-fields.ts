import type { Assumption } from '../notebook/types.ts'
import type { FieldChange } from './change-types.ts'
import { numberIn } from './number-step.ts'

const fields: readonly { readonly field: string; readonly of: (assumption: Assumption) => string }[] = [
  { field: 'basis', of: each => each.basis?.text ?? '' },
  { field: 'status', of: each => each.status },
  { field: 'closes', of: each => each.closes?.text ?? '' },
  { field: 'range', of: ({ range }) => (range ? `${range.from.text} to ${range.to.text}` : '') },
  { field: 'measured', of: each => each.measured?.text ?? '' },
  { field: 'evidence', of: each => each.evidence?.text ?? '' },
  { field: 'symbol', of: each => each.symbol?.text ?? '' },
]

/** What else is said of an assumption and is said otherwise now. The same range in another unit is no change. */
export function fieldsOf(old: Assumption | undefined, now: Assumption | undefined): FieldChange[] {
  return fields.flatMap(({ field, of }) => {
    const [a, b] = [old ? of(old) : '', now ? of(now) : '']
    if (field === 'status' && !(old && now)) return []
    return a === b || sameSpan(a, b) ? [] : [{ field, old: a, now: b }]
  })
}

const sameSpan = (a: string, b: string): boolean => {
  const [x, y] = [a, b].map(text => text.split(' to ').map(numberIn))
  if (!x || !y || x.length !== y.length) return false
  return x.every(
    (each, index) => each !== undefined && each.si === y[index]?.si && each.dimension === y[index]?.dimension,
  )
}
