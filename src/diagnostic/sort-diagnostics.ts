import type { Diagnostic } from './diagnostic.ts'

/** Returns the diagnostics in file order, each said once. Those of one place keep the order in which they were found. */
export function sortDiagnostics(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  const said = new Set<string>()
  const once = diagnostics.filter(({ rule, place, says }) => {
    const key = `${place.offset} ${rule} ${says}`
    if (said.has(key)) return false
    said.add(key)
    return true
  })
  return once.sort((a, b) => a.place.offset - b.place.offset)
}
