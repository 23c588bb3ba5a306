import { describe, expect, it } from 'vitest'
import type { Diagnostic } from '../../src/diagnostic/diagnostic.ts'
import { sortDiagnostics } from '../../src/diagnostic/sort-diagnostics.ts'

const at = (offset: number, says: string, rule: Diagnostic['rule'] = 'value-kind'): Diagnostic => ({
  rule,
  severity: 'error',
  place: { line: 1, column: offset + 1, offset, end: offset },
  says,
})

describe('diagnostics in order', () => {
  it('stand as in the file; those of one place as they were found', () => {
    const found = [at(9, 'c'), at(2, 'b'), at(2, 'a'), at(0, 'z')]
    expect(sortDiagnostics(found).map(({ says }) => says)).toEqual(['z', 'b', 'a', 'c'])
    expect(found[0]?.says).toBe('c')
  })
  it('are said once, but only where rule, place and sentence are the same', () => {
    const found = [at(1, 'a'), at(1, 'a'), at(1, 'b'), at(2, 'a'), at(1, 'a', 'key-unknown')]
    expect(sortDiagnostics(found).length).toBe(4)
  })
})
