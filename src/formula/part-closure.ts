import type { Leaves, Part } from './part.ts'
import { productShapes } from './product-shapes.ts'
import type { Shape } from './shape.ts'
import { sumShapes } from './sum-shapes.ts'
import type { Compiled } from './types.ts'

type Op = '+' | '-' | '*' | '/' | '^'

const shapes: ReadonlyMap<string, Shape> = new Map(Object.entries({ ...sumShapes, ...productShapes }))

/** The function of a part. */
export function closureOf(part: Part): Compiled {
  switch (part.kind) {
    case 'closure':
      return part.run
    case 'constant': {
      const { value } = part
      return () => value
    }
    case 'slot': {
      const { at } = part
      return slots => slots[at] ?? Number.NaN
    }
    case 'shape':
      return made(part.name, part.leaves)
  }
}

function made(name: string, { numbers, inner }: Leaves): Compiled {
  const shape = shapes.get(name)
  if (!shape) throw new TypeError(`there is no shape \`${name}\``)
  return shape(numbers as Parameters<Shape>[0], inner as Parameters<Shape>[1])
}

/** Two parts joined: the largest shape that the tables hold, with what does not fit into it made functions of their own. */
export function joined(op: Op, left: Part, right: Part): Part {
  const [x, y] = [closed(left), closed(right)]
  return shapeOf(op, left, right) ?? shapeOf(op, x, right) ?? shapeOf(op, left, y) ?? named(op, x, y)
}

const closed = (part: Part): Part => ({ kind: 'closure', run: closureOf(part) })

function shapeOf(op: Op, left: Part, right: Part): Part | undefined {
  const part = named(op, left, right)
  return shapes.has(part.name) ? part : undefined
}

function named(op: Op, left: Part, right: Part): Extract<Part, { kind: 'shape' }> {
  const [a, b] = [leavesOf(left), leavesOf(right)]
  const leaves = { numbers: [...a.numbers, ...b.numbers], inner: [...a.inner, ...b.inner] }
  return { kind: 'shape', name: `${nameOf(left)}${op}${nameOf(right)}`, leaves }
}

function nameOf(part: Part): string {
  if (part.kind === 'constant') return 'k'
  if (part.kind === 'slot') return 's'
  if (part.kind === 'closure') return 'x'
  return part.name.length === 1 ? part.name : `(${part.name})`
}

function leavesOf(part: Part): Leaves {
  if (part.kind === 'constant') return { numbers: [part.value], inner: [] }
  if (part.kind === 'slot') return { numbers: [part.at], inner: [] }
  return part.kind === 'closure' ? { numbers: [], inner: [part.run] } : part.leaves
}
