import type { Condition, Input, Module, WhenStep } from '../modules/module.ts'
import { newSlot } from './draft.ts'
import { pushOp } from './draft-ops.ts'
import { addLine, inputKey, judge, lineBase, moduleFault, type Stage, truthOf } from './module-scope.ts'
import type { PlanSteps } from './plan-rows.ts'
import type { PlannedBranch } from './plan-types.ts'
import { wordIn } from './scope.ts'

type WordCondition = Exclude<Condition, { readonly formula: string }>

/** Plans a branch: the one side that a word picks, or both behind guards where numbers decide. */
export function planWhen(stage: Stage, step: WhenStep, planSteps: PlanSteps): void {
  if ('formula' in step.condition) planOnNumbers(stage, { ...step, condition: step.condition }, planSteps)
  else planOnWords(stage, { ...step, condition: step.condition }, planSteps)
}

type On<C extends Condition> = WhenStep & { readonly condition: C }

function planOnWords(stage: Stage, step: On<WordCondition>, planSteps: PlanSteps): void {
  const { condition, says } = step
  const judged = judge(stage, condition)
  const holds = 'known' in judged && judged.known
  const side = holds ? step.yes : step.no
  if (side.length === 0) return
  const because = chosenWords(stage, condition, holds)
  const by = inputKey(stage, 'given' in condition ? condition.given : condition.choice)
  // One word of several: only the one that holds is worth a line.
  const asksOn = !holds && side.every(next => next.kind === 'when' && 'choice' in next.condition)
  if (says !== undefined && !asksOn)
    addLine(stage, { kind: 'branch', ...lineBase(stage, { says }), chosen: { holds, because, by } })
  planSteps(stage, side)
}

function planOnNumbers(stage: Stage, step: On<{ readonly formula: string }>, planSteps: PlanSteps): void {
  const { condition, says } = step
  if (says === undefined && !isChecked(stage, condition.formula))
    throw moduleFault(stage, `the branch on \`${condition.formula}\` says nothing`)
  const test = truthOf(stage, condition.formula)
  const yes = guardedBy(stage, test.slot, 1)
  const no = guardedBy(stage, test.slot, 0)
  const sides = [yes, no].flatMap(side => side.guards.slice(stage.guards.length))
  const line: PlannedBranch = {
    kind: 'branch',
    ...lineBase(stage, { says: says ?? '' }),
    test: { ...test, sides },
  }
  // One that says nothing is judged and not printed.
  if (says === undefined) stage.draft.trail.push(line)
  else addLine(stage, line)
  planSteps(yes, step.yes)
  planSteps(no, step.no)
}

/** Whether a check of the same comparison stands before in these steps: its verdict tells which side follows. */
const isChecked = ({ lines }: Stage, formula: string): boolean =>
  lines.some(line => line.kind === 'check' && line.formula.text === formula)

/** What the author chose, in the words of the input: `how the roof holds the wall: pinned`. */
function chosenWords({ module, scope }: Stage, condition: WordCondition, holds: boolean): string {
  const name = 'given' in condition ? condition.given : condition.choice
  const says = inputOf(module, name)?.says ?? name
  return `${says}: ${'given' in condition ? (holds ? 'given' : 'not given') : wordIn(scope, name)}`
}

function inputOf({ inputs }: Module, name: string): Input | undefined {
  const fields = Object.values(inputs).flatMap(input => (input.kind === 'list' ? [input.fields[name]] : []))
  return inputs[name] ?? fields.find(field => field !== undefined)
}

/** The same stage, evaluated only where the truth in a slot is `is`. */
export function guardedBy(stage: Stage, truth: number, is: 0 | 1): Stage {
  const guard = newSlot(stage.draft)
  const run = (slots: Float64Array): void => {
    slots[guard] = slots[truth] === is ? 1 : 0
  }
  pushOp(stage.draft, stage, { reads: [truth], writes: [guard], run })
  return { ...stage, guards: [...stage.guards, guard] }
}
