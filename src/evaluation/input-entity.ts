import type { Place } from '../diagnostic/diagnostic.ts'
import type { QuantityInput } from '../modules/module.ts'
import type { Dimension, Unit } from '../quantity/types.ts'
import { unitOf } from '../quantity/unit.ts'
import { type Sound, sameAs } from './author-formula.ts'
import { type Draft, newSlot } from './draft.ts'
import type { Field } from './input-field.ts'
import { type Literal, literalOf } from './literal.ts'
import { ownDimension } from './own-text.ts'
import type { Entity } from './plan-types.ts'
import { resultUnit } from './result-unit.ts'
import { rowSymbol } from './row-symbol.ts'

type Made = {
  readonly input: QuantityInput
  readonly sound: Sound
  readonly dimension: Dimension
  readonly place: Place
}

/** The entity of a quantity that an author gave, or that its default says. */
export function inputEntity(draft: Draft, made: Made, field: Field): Entity {
  const { input, sound, dimension, place } = made
  const literal = literalOf(sound.formula.tree)
  const same = sameAs(sound)
  const point = sound.result.kind === 'value' && sound.result.point === true
  return {
    kind: 'number',
    key: field.key,
    name: field.row ? `${field.name}_${field.row.index + 1}` : field.name,
    block: field.block,
    origin: 'input',
    slot: newSlot(draft, literal?.si),
    dimension,
    point,
    unit: inputUnit(draft, { input, literal, same, sound }),
    symbol: rowSymbol(input.symbol ?? field.name, field.row),
    says: input.says,
    place,
    ...(field.row ? { row: field.row } : {}),
    ...(literal ? { typed: { digits: literal.digits, unit: literal.unit } } : {}),
    ...(same ? { same } : {}),
  }
}

function inputUnit(
  draft: Draft,
  made: { input: QuantityInput; literal: Literal | undefined; same: Entity | undefined; sound: Sound },
): Unit {
  const { input, literal, same, sound } = made
  if (input.unit) return unitOf(input.unit[draft.system])
  if (sound.formula.to) return sound.formula.to
  return literal?.unit ?? same?.unit ?? resultUnit(draft, { dimension: ownDimension(input.dimension) })
}
