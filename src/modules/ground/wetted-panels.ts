import type { Method, Solved } from '../method.ts'

interface Box {
  readonly long: number
  readonly wide: number
  readonly toe: number
  readonly roof: number
  readonly ledge: number
  readonly under: number
  readonly water: number
  readonly gamma_w: number
}

const nothing: Box = { long: 0, wide: 0, toe: 0, roof: 0, ledge: 0, under: 0, water: 0, gamma_w: 0 }
const panelsAlong = 24

/** Vertical force of still water on a box with a toe: pressure on every panel of its wetted faces. */
export const wettedPanels: Method = {
  id: 'wetted-panels',
  title: 'Water pressure over the wetted faces',
  says: `Underside, roof and toe are cut into panels, ${panelsAlong} along each stretch; each bears the water pressure at its own depth.`,
  takes: {
    long: 'length',
    wide: 'length',
    toe: 'length',
    roof: 'length',
    ledge: 'length',
    under: 'length',
    water: 'length',
    gamma_w: 'unit_weight',
  },
  run: numbers => solved({ ...nothing, ...(numbers as Partial<Box>) }),
}

function solved(box: Box): Solved {
  const xs = cuts(box.toe, box.long)
  const ys = cuts(box.toe, box.wide)
  let up = 0
  let down = 0
  for (const x of xs) {
    for (const y of ys) {
      const top = x.inside && y.inside ? box.roof : box.ledge
      up += pressure(box, box.under) * x.width * y.width
      down += pressure(box, top) * x.width * y.width
    }
  }
  return {
    ok: true,
    values: { force: up - down },
    verified: `${xs.length * ys.length} panels; the upright faces give no vertical force`,
  }
}

const pressure = ({ gamma_w, water }: Box, depth: number): number => gamma_w * Math.max(0, depth - water)

interface Strip {
  readonly width: number
  readonly inside: boolean
}

/** Strips across one side: the toe, the box, the toe. */
function cuts(toe: number, length: number): readonly Strip[] {
  const stretch = (of: number, inside: boolean): readonly Strip[] =>
    of > 0 ? Array.from({ length: panelsAlong }, () => ({ width: of / panelsAlong, inside })) : []
  return [...stretch(toe, false), ...stretch(length, true), ...stretch(toe, false)]
}
