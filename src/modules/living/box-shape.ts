import type { Method } from '../method.ts'
import { NumericRefusal } from '../numerics/numeric-refusal.ts'
import { shapeByPanels } from './box-panels.ts'

/** Shape factor of a whole box, ends and corners included, from panels on its faces, coarse and fine. */
export const boxShape: Method = {
  id: 'box-shape',
  title: 'Panels on the faces of the box',
  says: 'The faces of the box are cut into some hundreds of panels of even flow; their flows are found so that every panel is as warm as the box, with the surface of the ground as a mirror.',
  takes: { width: 'length', long: 'length', height: 'length', cover: 'length' },
  run: numbers => {
    const [width, long, height, cover] = ['width', 'long', 'height', 'cover'].map(name => Number(numbers[name]))
    const box = { width: width ?? 0, long: long ?? 0, height: height ?? 0, cover: cover ?? 0 }
    try {
      const [coarse, fine] = [16, 24].map(n => shapeByPanels(box, n)) as [number, number]
      const change = Math.abs(coarse / fine - 1)
      if (!(change < 0.02)) return { ok: false, says: 'the panels do not settle on one flow' }
      const says = `panels two thirds as fine differ by ${(100 * change).toPrecision(1)} %`
      return { ok: true, values: { shape: fine }, verified: says }
    } catch (fault) {
      if (fault instanceof NumericRefusal) return { ok: false, says: fault.message }
      throw fault
    }
  },
}
