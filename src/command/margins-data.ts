import { shownWords } from '../evaluation/shown-words.ts'
import type { ShownEnd, ShownMargins } from '../study/shown-margins.ts'

/** Margins as data, in SI at full precision. */
export function marginsData({ margins, unsearched, runs }: ShownMargins) {
  return {
    margins: margins.map(({ key, number, si, value, range, searched, down, up, share }) => ({
      assumption: key,
      number,
      si,
      value: shownWords(value),
      ...(range ? { range: { from: shownWords(range.from), to: shownWords(range.to) } } : {}),
      searched: { from: shownWords(searched.from), to: shownWords(searched.to) },
      down: endData(down),
      up: endData(up),
      ...(share === undefined ? {} : { share }),
    })),
    unsearched: unsearched.map(({ key, why }) => ({ assumption: key, why })),
    runs,
  }
}

function endData(end: ShownEnd) {
  const head = { kind: end.kind, si: end.si, at: shownWords(end.at) }
  if (end.kind === 'none') return head
  if (end.kind === 'refusal') return { ...head, insideRange: end.inRange, rule: end.rule, says: end.says }
  const checks = end.checks.map(({ number, block, says, becomes }) => ({ number, block, says, becomes }))
  return { ...head, insideRange: end.inRange, checks }
}
