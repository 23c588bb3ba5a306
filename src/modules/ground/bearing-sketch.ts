import { type Drawing, type Point, rectangle, type Shape, type SketchView } from '../sketch.ts'

/** What a bearing sketch writes: the load on the base, how it presses over which width, what the ground resists. */
export interface BearingWords {
  readonly width: number
  readonly side: string
  /** Load over this width, from the far edge; the whole base where the load is central. */
  readonly pressed: number
  readonly load: string
  readonly resistance: string
}

const line = (points: readonly Point[]): Shape => ({ kind: 'ground', points })

/** Section through a base in the ground, to scale: depth, water, the load and the width that bears it. */
export function drawBearing(view: SketchView, words: BearingWords): Drawing {
  const { width, pressed } = words
  const [half, depth] = [width / 2, view.number('depth')]
  const slab = Math.max(0.08 * width, 0.1)
  const top = Math.max(0, slab - depth)
  const lift = 0.35 * width
  const heart = half - pressed / 2
  return {
    says: `Section through the base, to scale: ${view.shown(words.side)} wide, ${view.shown('depth')} deep, water at ${view.shown('water_depth')}; load ${view.shown(words.load)}, resistance ${view.shown(words.resistance)}.`,
    toScale: true,
    shapes: [
      ...(depth > 0
        ? [rectangle('soil', [-2 * half, -half], [-depth, 0]), rectangle('soil', [half, 2 * half], [-depth, 0])]
        : []),
      line([
        [-2.4 * half, 0],
        [-half, 0],
      ]),
      line([
        [half, 0],
        [2.4 * half, 0],
      ]),
      rectangle('concrete', [-half, half], [-depth, -depth + slab]),
      ...waterLevel(view, { half, depth }),
      { kind: 'arrow', from: [heart, top + lift], to: [heart, -depth + slab], label: view.label(words.load) },
      {
        kind: 'load',
        from: [half - pressed, -depth],
        to: [half, -depth],
        start: 0.12 * width,
        end: 0.12 * width,
        towards: [0, 1],
        label: view.label(words.resistance),
      },
      {
        kind: 'dimension',
        from: [half, -depth - 0.3 * width],
        to: [-half, -depth - 0.3 * width],
        off: 14,
        label: view.label(words.side),
      },
      ...(depth > 0
        ? [
            {
              kind: 'dimension' as const,
              from: [1.6 * half, -depth] as const,
              to: [1.6 * half, 0] as const,
              off: -10,
              label: view.label('depth'),
            },
          ]
        : []),
    ],
  }
}

function waterLevel(view: SketchView, { half, depth }: { half: number; depth: number }): readonly Shape[] {
  const water = view.number('water_depth')
  if (water > depth + 2 * half) return []
  return [{ kind: 'level', at: [-1.8 * half, -water], label: view.label('water_depth'), side: 'left', water: true }]
}
