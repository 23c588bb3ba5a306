import type { Element } from 'hast'
import { s } from 'hastscript'
import type { Drawing, Fill, Label, Point } from '../modules/sketch.ts'
import { type Beside, type Columned, column, columnOf, isCrowded } from './sketch-columns.ts'
import { type Box, bounds, crosses, drawable, frame, overlap, type Pads, type Sheet, union } from './sketch-frame.ts'
import { drawer } from './sketch-ink.ts'
import { patterns } from './sketch-patterns.ts'
import { leaderInk } from './sketch-strokes.ts'
import { labelRuns, letterSize, runSpans, runsWidth } from './sketch-text.ts'
import type { Ink, Spot, Wish } from './sketch-wish.ts'

interface Lettered {
  readonly label: Label
  readonly spot: Spot
  readonly box: Box
}

interface Obstacles {
  readonly taken: readonly Lettered[]
  readonly edges: Ink['edges']
}

interface Laid {
  readonly inks: readonly Ink[]
  readonly letters: readonly Lettered[]
  readonly leaders: Ink['edges']
  /** All that the drawing reaches, and the world's own part of it. */
  readonly reach: Box
  readonly world: Box
}

/**
 * A drawing as inline SVG, fitted into the sheet (points): to scale where it says so, with weights, gaps and lettering
 * in paper units. `id` makes its names unique on the page. Shapes with a number that could not be evaluated are left out.
 */
export function sketchSvg(drawing: Drawing, id: string, sheet: Sheet): Element {
  const sound = { ...drawing, shapes: drawing.shapes.filter(drawable) }
  const { inks, letters, leaders, reach } = fitted(sound, id, sheet)
  const fills = new Set<Fill>(sound.shapes.flatMap(shape => (shape.kind === 'polygon' ? [shape.fill] : [])))
  const view = [reach.left - 1, reach.top - 1, reach.right - reach.left + 2, reach.bottom - reach.top + 2].map(round)
  const size = { viewBox: view.join(' '), width: `${view[2]}pt`, height: `${view[3]}pt` }
  return s('svg.sketch', { ...size, role: 'img', ariaLabel: drawing.says, fontSize: letterSize }, [
    s('title', drawing.says),
    s('defs', patterns(id, fills)),
    ...inks.flatMap(ink => ink.strokes),
    ...leaders.map(leaderInk),
    ...letters.flatMap(lettering),
  ])
}

/** The drawing laid out again until its labels lie inside the sheet. */
function fitted(drawing: Drawing, id: string, sheet: Sheet): Laid {
  let pads: Pads = { left: 4, top: 4, right: 4, bottom: 4 }
  let laid = lay(drawing, id, sheet, pads)
  for (let turn = 0; turn < 4; turn += 1) {
    const wanted = overhang(laid)
    if (Object.values(pads).join() === Object.values(wanted).join()) break
    pads = wanted
    laid = lay(drawing, id, sheet, pads)
  }
  return laid
}

function overhang({ reach, world }: Laid): Pads {
  return {
    left: Math.max(0, world.left - reach.left) + 2,
    top: Math.max(0, world.top - reach.top) + 2,
    right: Math.max(0, reach.right - world.right) + 2,
    bottom: Math.max(0, reach.bottom - world.bottom) + 2,
  }
}

function lay(drawing: Drawing, id: string, sheet: Sheet, pads: Pads): Laid {
  const { place, box } = frame(drawing, sheet, pads)
  const inks = drawing.shapes.map(drawer(id, place))
  const wishes = inks.flatMap(ink => ink.wishes)
  const columns = crowded(wishes)
  const leaders = [...columns.values()].flatMap(({ leader }) => (leader ? [leader] : []))
  const edges = [...inks.flatMap(ink => ink.edges), ...leaders]
  const letters = placed(
    wishes.map(wish => held(wish, columns.get(wish))),
    edges,
  )
  const reach = union([box, bounds([corner(box), ...inks.flatMap(ink => ink.reach)]), ...letters.map(l => l.box)])
  return { inks, letters, leaders, reach, world: box }
}

const corner = (box: Box): Point => [box.left, box.top]

/** The labels of each column that would run into each other, set apart in the order of their marks. */
function crowded(wishes: readonly Wish[]): ReadonlyMap<Wish, Columned> {
  const columns = new Map<string, { wish: Wish; beside: Beside }[]>()
  for (const wish of wishes) {
    const [spot] = wish.spots
    if (!wish.mark || !spot) continue
    const beside: Beside = { spot, mark: wish.mark }
    columns.set(columnOf(beside), [...(columns.get(columnOf(beside)) ?? []), { wish, beside }])
  }
  const full = [...columns.values()].filter(members => isCrowded(members.map(({ beside }) => beside)))
  return new Map(
    full.flatMap(members => {
      const set = column(members.map(({ beside }) => beside))
      return members.flatMap(({ wish }, index): [Wish, Columned][] => {
        const one = set[index]
        return one ? [[wish, one]] : []
      })
    }),
  )
}

/** A label in a column has that one place. */
const held = (wish: Wish, columned: Columned | undefined): Wish =>
  columned ? { label: wish.label, spots: [columned.spot] } : wish

/** Labels placed one after the other, and then each again among all the others. */
function placed(wishes: Ink['wishes'], edges: Ink['edges']): readonly Lettered[] {
  let letters: readonly Lettered[] = []
  for (const wish of wishes) letters = [...letters, chosen(wish, { taken: letters, edges })]
  for (const [index, wish] of wishes.entries())
    letters = letters.with(index, chosen(wish, { taken: letters.filter((_, other) => other !== index), edges }))
  return letters
}

/** The place where a label meets fewest others and fewest lines; the first of equals. */
function chosen({ label, spots }: Ink['wishes'][number], { taken, edges }: Obstacles): Lettered {
  const width = runsWidth(labelRuns(label))
  const wanted = spots.length > 0 ? spots : [{ x: 0, y: 0, anchor: 'start' as const }]
  const tried = wanted.map(spot => ({ label, spot, box: letterBox(spot, width) }))
  const cost = ({ box }: Lettered): number =>
    20 * taken.filter(other => overlap(box, other.box)).length + edges.filter(edge => crosses(box, edge)).length
  return tried.reduce((best, next) => (cost(next) < cost(best) ? next : best))
}

function letterBox({ x, y, anchor }: Spot, width: number): Box {
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2
  return { left, top: y - letterSize * 0.78, right: left + width, bottom: y + letterSize * 0.3 }
}

/** A label on a white plate, so that no line runs through it. */
function lettering({ label, spot, box }: Lettered): Element[] {
  const at = { x: round(spot.x), y: round(spot.y), textAnchor: spot.anchor }
  const plate = {
    x: round(box.left - 1),
    y: round(box.top + 0.6),
    width: round(box.right - box.left + 2),
    height: round(box.bottom - box.top - 1),
  }
  return [
    s('rect', { ...plate, fill: '#fff', fillOpacity: 0.9 }),
    s('text', { ...at, fill: '#111' }, runSpans(labelRuns(label))),
  ]
}

function round(value: number): number {
  return Math.round(value * 100) / 100
}
