import type { Drawing, SketchView } from '../sketch.ts'

/** Side view of the form to scale, with the envelope of pressure drawn on it. */
export function drawFormPressure(view: SketchView): Drawing {
  const [height, knee] = [view.number('height'), view.number('z_1')]
  const [reach, wall] = [0.45 * height, 0.16 * height]
  const turn = height - knee
  const isLevel = turn > 0.001 * height
  const loads = [
    { kind: 'load', from: [0, height], to: [0, turn], start: 0, end: reach, towards: [-1, 0] },
    ...(isLevel
      ? [{ kind: 'load', from: [0, turn], to: [0, 0], start: reach, end: reach, towards: [-1, 0] } as const]
      : []),
  ] as const
  return {
    says: `Pressure of fresh concrete ${view.shown('height')} high on its form: as of a liquid down to ${view.shown('z_1')}, then level at ${view.shown('p_max')}.`,
    toScale: true,
    shapes: [
      {
        kind: 'polygon',
        points: [
          [-wall, 0],
          [0, 0],
          [0, height],
          [-wall, height],
        ],
        fill: 'lining',
      },
      ...loads,
      { kind: 'dimension', from: [-wall, 0], to: [-wall, height], off: 8, label: view.label('height') },
      ...(isLevel
        ? [{ kind: 'dimension', from: [reach, height], to: [reach, turn], off: 8, label: view.label('z_1') } as const]
        : []),
      { kind: 'label', at: [0.5 * reach, -0.05 * height], label: view.label('p_max'), anchor: 'middle' },
    ],
  }
}
