import type { Step } from '../modules/module.ts'
import type { Stage } from './module-scope.ts'
import { planWhen } from './plan-branch.ts'
import { planCheck } from './plan-check.ts'
import { planCarried, planFormula, planTake } from './plan-formula.ts'
import { planLook } from './plan-look.ts'
import { planEach, planPairs } from './plan-rows.ts'
import { planSolve } from './plan-solve.ts'

/** Plans steps in the order of the book: each proved, given its slot, its line and what to do when numbers are known. */
export function planSteps(stage: Stage, steps: readonly Step[]): void {
  for (const step of steps) planStep(stage.row ? { ...stage, step } : stage, step)
}

function planStep(stage: Stage, step: Step): void {
  switch (step.kind) {
    case 'step':
      planFormula(stage, step)
      return
    case 'look':
      planLook(stage, step)
      return
    case 'each':
      planEach(stage, step, planSteps)
      return
    case 'pairs':
      planPairs(stage, step, planSteps)
      return
    case 'carried':
      planCarried(stage, step)
      return
    case 'take':
      planTake(stage, step)
      return
    case 'when':
      planWhen(stage, step, planSteps)
      return
    case 'solve':
      planSolve(stage, step)
      return
    case 'check':
      planCheck(stage, step)
      return
  }
}
