import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { nearestName } from '../diagnostic/nearest-name.ts'
import type { Written } from '../notebook/types.ts'

/** The error at something the author wrote that means nothing, with the nearest of the names it could have been. */
export function unknownWritten(
  rule: Diagnostic['rule'],
  { text, place }: Written,
  { says, names = [] }: { readonly says: string; readonly names?: Iterable<string> },
): Diagnostic {
  const nearest = nearestName(text, names)
  return {
    rule,
    severity: 'error',
    place,
    says,
    ...(nearest === undefined ? {} : { help: `Did you mean \`${nearest}\`?` }),
  }
}
