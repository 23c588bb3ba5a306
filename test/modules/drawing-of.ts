import { numberLines } from '../../src/evaluation/anchors.ts'
import type { PlannedCalc } from '../../src/evaluation/plan-types.ts'
import { sketchOf } from '../../src/evaluation/sketch-view.ts'
import type { CaseInput, Module } from '../../src/modules/module.ts'
import type { Drawing, Point, Shape } from '../../src/modules/sketch.ts'
import type { System } from '../../src/quantity/types.ts'
import { runModule } from './run-module.ts'

/** A module's drawing of one block, from the real evaluation; refuses (throws) where there is none. */
export function drawingOf(
  module: Module,
  inputs: Readonly<Record<string, CaseInput>>,
  options: { units?: System } = {},
): Drawing {
  const { results } = runModule(module, inputs, options)
  const context = { results, numbering: numberLines(results), doubts: new Map(), figures: 4, printed: new Map() }
  const drawing = sketchOf(context, results.plan.blocks[0] as PlannedCalc)
  if (!drawing) throw new Error(`${module.id} has no drawing of this block`)
  return drawing
}

/** Every point of a shape. */
export function pointsOf(shape: Shape): readonly Point[] {
  if ('points' in shape) return shape.points
  return 'at' in shape ? [shape.at] : [shape.from, shape.to]
}
