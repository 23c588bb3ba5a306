import { type Drawing, type Point, type Shape, type SketchView, stroke } from '../sketch.ts'

const hour = 3600
const top = 22

/** Percent of a gas at an hour: straight in a sealed room, bent towards where it settles with air coming in. */
function curve(view: SketchView, about: { from: string; makes: number; out: string; until: number }): readonly Point[] {
  const start = 100 * view.number(about.from)
  const slope = (100 * about.makes * view.number('generation') * hour) / view.number('volume')
  const changes = (view.number('leakage') * hour) / view.number('volume')
  const settles = 100 * view.number(about.out) + slope / changes
  const at = (t: number): number =>
    changes > 0 ? settles + (start - settles) * Math.exp(-changes * t) : start + slope * t
  return Array.from({ length: 41 }, (_, i) => (about.until * i) / 40).map(t => [t, Math.min(Math.max(at(t), 0), top)])
}

/** A line over one hour, dashed where it is the first limit. */
const upright = (t: number, more: { dashed?: true } = {}): Shape =>
  stroke(
    'thin',
    [
      [t, 0],
      [t, top],
    ],
    more,
  )

/** A chart: carbon dioxide and oxygen in percent against hours, with their limits, the first limit and the time wanted. */
export function drawClosedUp(view: SketchView): Drawing {
  const [wanted, first] = [view.number('wanted') / hour, view.number('t_closed') / hour]
  const until = 1.15 * Math.max(wanted, Math.min(first, 3 * wanted))
  const level = (name: string): Shape => {
    const y = 100 * view.number(name)
    return stroke(
      'thin',
      [
        [0, y],
        [until, y],
      ],
      { dashed: true },
    )
  }
  const co2 = curve(view, { from: 'co2_start', makes: 1, out: 'co2_outdoor', until })
  const oxygen = curve(view, { from: 'o_0', makes: -1 / view.number('quotient'), out: 'oxygen_outdoor', until })
  const atWanted = (name: string): Point => [wanted, 100 * view.number(name)]
  return {
    says: `Carbon dioxide and oxygen in percent against time closed up: after ${view.shown('wanted')} carbon dioxide is at ${view.shown('c_w')} and oxygen at ${view.shown('o_w')}. The first limit is reached after ${view.shown('t_closed')}.`,
    toScale: false,
    shapes: [
      stroke('medium', [
        [0, top],
        [0, 0],
        [until, 0],
      ]),
      level('co2_limit'),
      level('oxygen_limit'),
      stroke('thick', co2),
      stroke('thick', oxygen),
      upright(wanted),
      { kind: 'label', at: [0, 100 * view.number('co2_limit') + 2.2], label: view.label('co2_limit'), anchor: 'start' },
      {
        kind: 'label',
        at: [0, 100 * view.number('oxygen_limit') - 1.4],
        label: view.label('oxygen_limit'),
        anchor: 'start',
      },
      { kind: 'label', at: atWanted('c_w'), label: view.label('c_w'), anchor: 'end' },
      { kind: 'label', at: atWanted('o_w'), label: view.label('o_w'), anchor: 'end' },
      { kind: 'label', at: [wanted, 0], label: view.label('wanted'), anchor: 'middle' },
      ...(first <= until ? [upright(first, { dashed: true })] : []),
      { kind: 'label', at: [Math.min(first, until), 11], label: view.label('t_closed'), anchor: 'end' },
      { kind: 'label', at: [0, top], label: { text: 'percent' }, anchor: 'end' },
    ],
  }
}
