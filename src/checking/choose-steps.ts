import type { CheckedStep } from './checked-step.ts'

/**
 * The steps that one word of the command line means: a step's number (`4.07`, all its rows), a range of numbers (`4.03-4.09`), a block (`roof`),
 * or a value (`roof.M_x`). Nothing where no step is meant; ranges run in the package's order and may cross blocks.
 */
export function chooseSteps(steps: readonly CheckedStep[], word: string): readonly CheckedStep[] {
  const range = rangeOf(word)
  if (range) return between(steps, range)
  if (/^\d+\.\d+[a-z]*$/.test(word)) return steps.filter(step => hasNumber(step, word))
  if (!word.includes('.')) return steps.filter(({ block }) => block === word)
  const point = word.indexOf('.')
  const [block, name] = [word.slice(0, point), word.slice(point + 1)]
  return steps.filter(step => step.block === block && (step.key === name || gives(step, name)))
}

/** Both ends of a range of numbers; nothing where the word is none. */
export function rangeOf(word: string): { readonly first: string; readonly last: string } | undefined {
  const range = /^(\d+\.\d+[a-z]*)\s*(?:-|–|\.\.)\s*(\d+\.\d+[a-z]*)$/.exec(word)
  return range ? { first: range[1] ?? '', last: range[2] ?? '' } : undefined
}

const hasNumber = ({ line }: CheckedStep, number: string): boolean =>
  line.number === number || line.number.replace(/[a-z]+$/, '') === number

function gives({ line }: CheckedStep, name: string): boolean {
  if (line.kind === 'solve') return line.gives.some(given => given.name === name)
  return line.kind !== 'branch' && line.name === name
}

function between(
  steps: readonly CheckedStep[],
  { first, last }: { first: string; last: string },
): readonly CheckedStep[] {
  const from = steps.findIndex(step => hasNumber(step, first))
  const to = steps.findLastIndex(step => hasNumber(step, last))
  return from < 0 || to < from ? [] : steps.slice(from, to + 1)
}
