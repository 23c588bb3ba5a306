import { diffArrays } from 'diff'

/** One place where the text of a package is not what its notebook gives. */
export interface TextDifference {
  /** Counted from 1. */
  readonly page: number
  readonly stands: string
  readonly gives: string
}

/** Where two texts of pages part, in order; pages that one of them lacks differ whole. */
export function pageDifferences(
  stands: readonly (readonly string[])[],
  gives: readonly (readonly string[])[],
): readonly TextDifference[] {
  return Array.from({ length: Math.max(stands.length, gives.length) }).flatMap((_, index) =>
    differencesOf(stands[index] ?? [], gives[index] ?? []).map(found => ({ page: index + 1, ...found })),
  )
}

function differencesOf(stands: readonly string[], gives: readonly string[]): Omit<TextDifference, 'page'>[] {
  const found: { stands: string; gives: string }[] = []
  let open = false
  for (const { added, removed, value } of diffArrays([...stands], [...gives])) {
    if (!added && !removed) {
      open = false
      continue
    }
    const last = found.at(-1)
    const text = value.join(' ')
    if (open && last) {
      if (removed) last.stands = `${last.stands} ${text}`.trim()
      else last.gives = `${last.gives} ${text}`.trim()
    } else found.push({ stands: removed ? text : '', gives: removed ? '' : text })
    open = true
  }
  return found
}
