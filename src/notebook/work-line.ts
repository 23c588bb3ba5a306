import { type InnerText, innerWritten } from './inner-text.ts'
import type { Written } from './types.ts'

/** One line of working: what stands before the `#`, and the remark after it. */
export interface WorkLine {
  readonly code: Written
  readonly remark?: Written
}

/** Returns the lines of a `work` block that say something; blank lines and lines of remark alone are left out. */
export function workLines(inner: InnerText): readonly WorkLine[] {
  const lines: WorkLine[] = []
  for (const [index, start] of inner.starts.entries()) {
    const end = inner.ends[index]?.inner ?? start
    const hash = inner.text.slice(start, end).indexOf('#')
    const code = innerWritten(inner, start, hash < 0 ? end : start + hash)
    if (code.text === '') continue
    const remark = hash < 0 ? undefined : innerWritten(inner, start + hash + 1, end)
    lines.push(remark === undefined || remark.text === '' ? { code } : { code, remark })
  }
  return lines
}
