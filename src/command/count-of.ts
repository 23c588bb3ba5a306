import type { Diagnostic } from '../diagnostic/diagnostic.ts'

export const plural = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`

/** How many errors and warnings there are, in words. */
export function countOf(diagnostics: readonly Diagnostic[]): { readonly errors: string; readonly warnings: string } {
  const errors = diagnostics.filter(fault => fault.severity === 'error').length
  return { errors: plural(errors, 'error'), warnings: plural(diagnostics.length - errors, 'warning') }
}
