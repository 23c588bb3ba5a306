import type { CheckingState } from '../checking/checking-state.ts'
import type { CheckerComment, CheckerMark } from '../typesetting/checker-mark.ts'

/** What the record holds of each step, by the step's anchor; comments are numbered through the package. */
export function checkerMarks(state: CheckingState | undefined): ReadonlyMap<string, CheckerMark> {
  const marks = new Map<string, CheckerMark>()
  let count = 0
  for (const { line, standing, fallen, comments } of state?.steps ?? []) {
    if (standing.length + fallen.length + comments.length === 0) continue
    const numbered = comments.map((comment): CheckerComment => ({ number: `C${++count}`, ...comment }))
    const again = new Set(standing.map(({ by }) => by))
    const lost = fallen.map(({ tick }) => tick.by).filter(by => !again.has(by))
    marks.set(line.id, {
      initials: [...again].map(initialsOf),
      fallen: [...new Set(lost)].map(initialsOf),
      comments: numbered,
    })
  }
  return marks
}

/** `J. Okonedo` is JO. */
const initialsOf = (name: string): string =>
  name
    .split(/[\s.-]+/)
    .map(part => part.slice(0, 1).toUpperCase())
    .join('')
    .slice(0, 3)
