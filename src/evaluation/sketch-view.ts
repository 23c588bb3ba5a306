import type { Drawing, SketchView } from '../modules/sketch.ts'
import { one, unitText } from '../quantity/unit.ts'
import type { Entity, PlannedCalc } from './plan-types.ts'
import { type PrintContext, shownOf, siOf } from './print-context.ts'
import { shownWords } from './shown-words.ts'

/** The module's sketch of this block; none where the block is not complete enough to be drawn. */
export function sketchOf(context: PrintContext, block: PlannedCalc): Drawing | undefined {
  const { sketch } = block.module
  if (!sketch || context.results.slots[block.alive] !== 1) return undefined
  return sketch(viewOf(context, block, ''))
}

function viewOf(context: PrintContext, block: PlannedCalc, suffix: string): SketchView {
  const find = (name: string): Entity | undefined => block.names.get(`${name}${suffix}`) ?? block.names.get(name)
  const number = (name: string): number => {
    const entity = find(name)
    return entity ? siOf(context, entity) : Number.NaN
  }
  const shown = (name: string): string => {
    const entity = find(name)
    return entity && Number.isFinite(siOf(context, entity)) ? shownWords(shownOf(context, entity)) : ''
  }
  return {
    number,
    shown,
    label: name => ({ symbol: find(name)?.symbol ?? name, value: shown(name) }),
    unit: name => {
      const { unit } = find(name) ?? { unit: one }
      return { text: unitText(unit), si: unit.factor }
    },
    word: choice => block.words.get(`${choice}${suffix}`) ?? block.words.get(choice) ?? '',
    rows: list =>
      Array.from({ length: block.rows.get(list) ?? 0 }, (_, index) => viewOf(context, block, `_${index + 1}`)),
  }
}
