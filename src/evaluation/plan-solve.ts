import type { Method, Solved } from '../modules/method.ts'
import type { SolveStep } from '../modules/module.ts'
import { NumericRefusal } from '../modules/numerics/numeric-refusal.ts'
import { pushOp } from './draft-ops.ts'
import { addLine, declare, isTrue, judge, lineBase, moduleFault, type Stage, soundStep } from './module-scope.ts'
import { ownDimension } from './own-text.ts'
import type { Entity, PlannedSolve } from './plan-types.ts'
import { findIn, wordIn } from './scope.ts'
import { settled } from './settled.ts'

/** Plans a numerical method: what it takes is proved; its answers are kept by the numbers it took. */
export function planSolve(stage: Stage, step: SolveStep): void {
  const words: Record<string, string> = {}
  for (const [name, word] of Object.entries(step.words ?? {})) {
    const text = 'word' in word ? word.word : wordIn(stage.scope, word.choice)
    if (text === undefined) throw moduleFault(stage, `method ${step.method.id}: no word for \`${name}\``)
    words[name] = text
  }
  const numbers = Object.entries(step.takes).flatMap(([name, taken]) => {
    if (typeof taken === 'string' || 'list' in taken) return [takenOf(stage, step, { name, taken })]
    return hasPart(stage, taken.ifGiven) ? [takenOf(stage, step, { name, taken: taken.ifGiven })] : []
  })
  const takes: PlannedSolve['takes'] = [
    ...numbers.map(({ name, value, says }) => ({ name, says, value })),
    ...Object.entries(words).map(([name, value]) => ({ name, says: name.replaceAll('_', ' '), value })),
  ]
  const gives = Object.entries(step.gives).map(([name, given]) => ({
    name,
    entity: declare(stage, { ...given, dimension: ownDimension(given.dimension) }),
  }))
  const solve = keepAnswers(step.method, words, numbers)
  const run = (slots: Float64Array): void => {
    const answer = solve(slots)
    for (const { name, entity } of gives)
      slots[entity.slot] = settled(answer.ok ? (answer.values[name] ?? Number.NaN) : Number.NaN)
  }
  const reads = numbers.flatMap(({ value }) => ('kind' in value ? [value.slot] : value.map(({ slot }) => slot)))
  pushOp(stage.draft, stage, { reads, writes: gives.map(({ entity }) => entity.slot), solves: true, run })
  addLine(stage, { kind: 'solve', ...lineBase(stage, step), step, takes, gives, solve })
}

interface Taken {
  readonly name: string
  readonly says: string
  readonly value: Entity | readonly Entity[]
  readonly read: (slots: Float64Array) => number | readonly number[]
}

function takenOf(
  stage: Stage,
  step: SolveStep,
  about: { name: string; taken: string | { readonly list: string } },
): Taken {
  const { name, taken } = about
  const dimension = ownDimension(step.method.takes[name] ?? '')
  if (typeof taken !== 'string') {
    const rows = findIn(stage.scope, taken.list)
    if (!rows || 'kind' in rows)
      throw moduleFault(stage, `method ${step.method.id}: no list is called \`${taken.list}\``)
    if (rows.some(entity => entity.dimension !== dimension))
      throw moduleFault(stage, `method ${step.method.id}: \`${name}\` has another dimension`)
    return {
      name,
      says: rows[0]?.says ?? name,
      value: rows,
      read: slots => rows.map(entity => slots[entity.slot] ?? Number.NaN),
    }
  }
  const { operands, compiled, result, formula } = soundStep(stage, taken)
  if (result.kind !== 'value' || result.dimension !== dimension)
    throw moduleFault(stage, `method ${step.method.id}: \`${name}\` has another dimension`)
  const value = formula.tree.kind === 'name' ? operands.get(formula.tree.name) : undefined
  if (!value || !('kind' in value) || value.kind !== 'number')
    throw moduleFault(stage, `method ${step.method.id}: \`${name}\` takes a named value`)
  return { name, says: value.says, value, read: compiled }
}

/** Whether this block has the value, and the words that were chosen give it a part. */
function hasPart(stage: Stage, name: string): boolean {
  const input = stage.module.inputs[name]
  const idle = input?.kind === 'quantity' && input.when !== undefined && !isTrue(judge(stage, input.when))
  return !idle && findIn(stage.scope, name) !== undefined
}

const kept = 64

/** Runs the method once for equal numbers; remembers the latest answers only. */
function keepAnswers(
  method: Method,
  words: Readonly<Record<string, string>>,
  numbers: readonly Taken[],
): (slots: Float64Array) => Solved {
  const answers = new Map<string, Solved>()
  return slots => {
    const values = numbers.map(({ name, read }) => [name, read(slots)] as const)
    const key = JSON.stringify(values)
    const known = answers.get(key)
    if (known) return known
    const finite = values.every(([, value]) =>
      typeof value === 'number' ? Number.isFinite(value) : value.every(Number.isFinite),
    )
    const answer: Solved = finite
      ? answerOf(method, Object.fromEntries(values), words)
      : { ok: false, says: 'a value it takes is not known' }
    if (answers.size >= kept) answers.delete(answers.keys().next().value ?? '')
    answers.set(key, answer)
    return answer
  }
}

/** What the method answers; numbers that something within it will not take are a refusal of its own. */
function answerOf(method: Method, ...taken: Parameters<Method['run']>): Solved {
  try {
    return method.run(...taken)
  } catch (thrown) {
    if (thrown instanceof NumericRefusal) return { ok: false, says: thrown.message }
    throw thrown
  }
}
