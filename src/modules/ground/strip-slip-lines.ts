import type { Method, Solved } from '../method.ts'
import { findRoot } from '../numerics/find-root.ts'
import { NumericRefusal } from '../numerics/numeric-refusal.ts'
import { percentAbove } from '../percent-above.ts'
import { lowerEdge, mostTurn, type Node, pressureOver, type StripGround } from './slip-lines.ts'

const partsOfFan = 24

/** What a rough strip bears on the level of its base, by the field of slip lines under it: no bearing factors, no terms added up. */
export const stripSlipLines: Method = {
  id: 'strip-slip-lines',
  title: 'Slip lines under a strip',
  says: `Stress along the two families of slip lines is marched from the ground beside the strip through a fan of ${partsOfFan} by ${partsOfFan} parts about its edge to the axis; reach and turn of the fan are sought so that the lines end there upright.`,
  takes: { phi: 'angle', c: 'pressure', gamma: 'unit_weight', q: 'pressure', width: 'length' },
  run: numbers => {
    const at = (name: string): number => Number(numbers[name] ?? 0)
    const scale = at('q') + at('c') + at('gamma') * at('width')
    const ground = {
      phi: at('phi'),
      c: at('c') / scale,
      gamma: (at('gamma') * at('width')) / scale,
      q: at('q') / scale,
    }
    try {
      return solved(ground, scale)
    } catch (fault) {
      if (fault instanceof NumericRefusal) return { ok: false, says: fault.message }
      throw fault
    }
  },
}

function solved(ground: StripGround, scale: number): Solved {
  const [coarse, fine] = [borne(ground, partsOfFan / 2), borne(ground, partsOfFan)]
  if (coarse === undefined || fine === undefined)
    return { ok: false, says: 'no field of slip lines fits under the strip' }
  const change = Math.abs(fine - coarse) / fine
  if (!(change < 0.05)) return { ok: false, says: 'the field of slip lines does not settle on one pressure' }
  return {
    ok: true,
    values: { pressure: fine * scale },
    verified: `half as many parts change the pressure by less than ${percentAbove(change, 2)} %`,
  }
}

/** Pressure on a strip one wide; none where no field fits under it. */
function borne(ground: StripGround, parts: number): number | undefined {
  const lack = (log: number): number => {
    const edge = upright(ground, { reach: Math.exp(log), parts })
    return Math.abs(end(edge).x) - 0.5
  }
  const [from, to] = [Math.log(0.02), Math.log(60)]
  if (!(lack(from) < 0 && lack(to) > 0)) return undefined
  const { root } = findRoot(lack, { from, to, tolerance: 1e-7 })
  return pressureOver(ground, upright(ground, { reach: Math.exp(root), parts }))
}

const end = (edge: readonly Node[]): Node => edge[edge.length - 1] as Node

/**
 * The lower edge that ends where the major stress stands upright, as it does on the axis. Where no turn about the edge of the strip
 * comes to that, soil slides along a part of the base.
 */
function upright(ground: StripGround, size: { reach: number; parts: number }): readonly Node[] {
  const most = mostTurn(ground)
  const edge = (turn: number, sliding: number) => lowerEdge(ground, { ...size, turn, sliding })
  const leans = (turn: number, sliding: number): number => end(edge(turn, sliding)).psi - Math.PI / 2
  if (leans(most, 0) > 0) {
    const { root } = findRoot(turn => leans(turn, 0), { from: Math.PI / 4, to: most, tolerance: 1e-8 })
    return edge(root, 0)
  }
  // Between the two kinds of field their meshes part by a little.
  const [least, whole] = [1e-9, 1 - 1e-9]
  if (leans(most, least) > 0) return edge(most, least)
  const { root } = findRoot(sliding => leans(most, sliding), { from: least, to: whole, tolerance: 1e-8 })
  return edge(most, root)
}
