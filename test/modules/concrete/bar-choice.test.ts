import { describe, expect, it } from 'vitest'
import { barChoiceAci318 } from '../../../src/modules/concrete/bar-choice-aci-318.ts'
import { barChoiceEn1992 } from '../../../src/modules/concrete/bar-choice-en-1992.ts'
import { barChoiceIs456 } from '../../../src/modules/concrete/bar-choice-is-456.ts'
import {
  metricBars,
  metricDiameter,
  metricMass,
  usArea,
  usBars,
  usDiameter,
  usMass,
} from '../../../src/modules/concrete/bar-tables.ts'
import type { Module } from '../../../src/modules/module.ts'
import type { Shape } from '../../../src/modules/sketch.ts'
import { drawingOf } from '../drawing-of.ts'
import { runModule } from '../run-module.ts'

type More = Readonly<Record<string, string>>
const runs =
  (module: Module) =>
  (more: More = {}) =>
    runModule(module, { ...module.example, ...more })
const [is, aci, en] = [runs(barChoiceIs456), runs(barChoiceAci318), runs(barChoiceEn1992)]
const inches = (metres: number) => metres / 0.0254
const all = [
  [barChoiceIs456.id, barChoiceIs456],
  [barChoiceAci318.id, barChoiceAci318],
  [barChoiceEn1992.id, barChoiceEn1992],
] as const

describe.each(all)('%s', (id, module) => {
  const run = runs(module)

  it.each(['SI', 'US'] as const)(`${id}: the example evaluates without a message, in %s`, units => {
    expect(runModule(module, module.example, { units }).diagnostics).toEqual([])
  })

  it(`${id}: area over spacing, and the widest spacing gives just the steel needed`, () => {
    const ran = run({ required_area: '2000 mm^2/m', bar_size: '16 mm', thickness: '400 mm', spacing: '90 mm' })
    expect(ran.si('A_s')).toBeCloseTo((Math.PI * 0.008 ** 2) / 0.09, 12)
    const used = { required_area: '2000 mm^2/m', bar_size: '16 mm', thickness: '400 mm' }
    expect(run({ ...used, spacing: `${ran.si('s_use')} m` }).satisfied('area')).toBe(true)
    expect(run({ ...used, spacing: `${ran.si('s_use') * 1.001} m` }).satisfied('area')).toBe(false)
  })

  it(`${id}: the least steel governs where little is asked`, () => {
    const ran = run({ required_area: '0 mm^2/m' })
    expect(ran.si('A_need')).toBe(ran.si('A_min'))
    expect(run({ required_area: '5000 mm^2/m' }).si('A_need')).toBeCloseTo(0.005, 12)
  })

  it(`${id}: bars that touch are refused`, () => {
    expect(run({ bar_size: '20 mm', spacing: '20.1 mm' }).errors).toEqual([])
    expect(run({ bar_size: '20 mm', spacing: '20 mm' }).errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
  })

  it(`${id}: a cover without effective depth is refused, one beyond half the depth is a warning`, () => {
    const deep = (cover: string) => run({ cover, thickness: '200 mm', bar_size: '20 mm' })
    expect(deep('190.1 mm').errors.map(({ rule }) => rule)).toEqual(['limit-exceeded'])
    expect(deep('189.9 mm').errors).toEqual([])
    const says = 'the effective depth is at least half the thickness'
    const kept = (cover: string) => deep(cover).limits.find(each => each.says === says)?.kept
    expect(kept('90 mm')).toBe(true)
    expect(kept('91 mm')).toBe(false)
  })

  it(`${id}: the bars are drawn at their spacing above the cover`, () => {
    const drawing = drawingOf(module, { ...module.example, bar_size: '20 mm', spacing: '150 mm', cover: '50 mm' })
    const dots = drawing.shapes.filter(
      (shape): shape is Extract<Shape, { kind: 'polygon' }> => shape.kind === 'polygon' && shape.fill === 'void',
    )
    const middle = dots.map(({ points }) => points.reduce((sum, [x]) => sum + x, 0) / points.length)
    expect((middle[1] ?? 0) - (middle[0] ?? 0)).toBeCloseTo(0.15, 9)
    expect(Math.min(...(dots[0]?.points ?? []).map(([, y]) => y))).toBeCloseTo(0.05, 9)
  })
})

describe('bar-choice-is-456', () => {
  it.each([
    ['slab, main', 'Fe 250', '12 mm', 0.0015 * 250],
    ['slab, main', 'Fe 500', '12 mm', 0.0012 * 250],
    ['slab, secondary', 'Fe 500', '20 mm', 0.0012 * 250],
    ['wall, vertical', 'Fe 500', '16 mm', 0.0006 * 250],
    ['wall, vertical', 'Fe 500', '20 mm', 0.00075 * 250],
    ['wall, vertical', 'Fe 250', '12 mm', 0.00075 * 250],
    ['wall, horizontal', 'Fe 415', '12 mm', 0.001 * 250],
    ['wall, horizontal', 'Fe 415', '25 mm', 0.00125 * 250],
  ])('bar-choice-is-456: %s, %s, %s', (member, steel, bar, least) => {
    expect(is({ member, steel, bar_size: bar }).si('A_min') * 1e3).toBeCloseTo(least, 9)
  })

  it.each([
    ['slab, main', '250 mm', 0.3],
    ['slab, main', '140 mm', 3 * 0.094],
    ['slab, secondary', '250 mm', 0.45],
    ['slab, secondary', '130 mm', 5 * 0.084],
    ['wall, vertical', '140 mm', 0.42],
    ['wall, horizontal', '250 mm', 0.45],
  ])('bar-choice-is-456: largest spacing of %s in %s', (member, thickness, most) => {
    const ran = is({ member, thickness })
    expect(ran.si('s_most')).toBeCloseTo(most, 9)
    expect(is({ member, thickness, spacing: `${most} m` }).satisfied('spacing_most')).toBe(true)
    expect(is({ member, thickness, spacing: `${most + 0.001} m` }).satisfied('spacing_most')).toBe(false)
  })

  it('bar-choice-is-456: clear distance of aggregate and 5 mm, or of the bar', () => {
    expect(is().si('s_clear')).toBeCloseTo(0.025, 12)
    expect(is({ bar_size: '32 mm' }).si('s_clear')).toBeCloseTo(0.032, 12)
    expect(is({ spacing: '37 mm' }).satisfied('spacing_clear')).toBe(true)
    expect(is({ spacing: '36.9 mm' }).satisfied('spacing_clear')).toBe(false)
  })

  it('bar-choice-is-456: bars of a slab are at most an eighth of its depth; a wall has no such rule', () => {
    expect(is({ bar_size: '25 mm', thickness: '200 mm' }).satisfied('bar_largest')).toBe(true)
    expect(is({ bar_size: '25 mm', thickness: '199 mm' }).satisfied('bar_largest')).toBe(false)
    expect(() => is({ member: 'wall, vertical' }).satisfied('bar_largest')).toThrow(/no check/)
  })
})

describe('bar-choice-aci-318', () => {
  it.each([
    ['slab, main', 'No. 5', 0.0018],
    ['slab, secondary', 'No. 4', 0.0018],
    ['wall, vertical', 'No. 5', 0.0006],
    ['wall, vertical', 'No. 6', 0.00075],
    ['wall, horizontal', 'No. 5', 0.001],
    ['wall, horizontal', 'No. 6', 0.00125],
  ])('bar-choice-aci-318: least steel of %s with %s', (member, bar, ratio) => {
    expect(aci({ member, bar_size: bar }).si('A_min')).toBeCloseTo(ratio * 0.254, 12)
  })

  it('bar-choice-aci-318: walls of a lower grade need the higher steel', () => {
    const least = (f_y: string) => aci({ member: 'wall, vertical', f_y }).si('A_min')
    expect(least('59000 psi') / least('60000 psi')).toBeCloseTo(1.25, 9)
  })

  // Table 24.3.2 (memory), worked by hand: 15 (40000/40000) - 2.5 c, at most 12 (40000/40000), in inches.
  it.each([
    ['1 in', 12],
    ['1.2 in', 12],
    ['1.3 in', 11.75],
    ['3 in', 7.5],
  ])('bar-choice-aci-318: crack control with cover %s asks for %d in', (cover, printed) => {
    expect(inches(aci({ cover }).si('s_crack'))).toBeCloseTo(printed, 6)
  })

  it.each([
    ['slab, main', '3 in', 9],
    ['slab, secondary', '3 in', 15],
    ['slab, secondary', '10 in', 18],
    ['wall, vertical', '5 in', 15],
    ['wall, horizontal', '10 in', 18],
  ])('bar-choice-aci-318: largest spacing of %s in %s is %d in', (member, thickness, most) => {
    const at = (spacing: number) =>
      aci({ member, thickness, cover: '0.75 in', bar_size: 'No. 3', spacing: `${spacing} in` })
    expect(inches(at(6).si('s_most'))).toBeCloseTo(most, 9)
    expect(at(most).satisfied('spacing_most')).toBe(true)
    expect(at(most + 0.01).satisfied('spacing_most')).toBe(false)
  })

  it('bar-choice-aci-318: clear distance of an inch, a bar, or four thirds of the aggregate', () => {
    expect(inches(aci({ aggregate: '0.5 in' }).si('s_clear'))).toBeCloseTo(1, 9)
    expect(inches(aci({ aggregate: '1.5 in' }).si('s_clear'))).toBeCloseTo(2, 9)
    expect(inches(aci({ bar_size: 'No. 11' }).si('s_clear'))).toBeCloseTo(1.41, 9)
    expect(aci({ spacing: '1.63 in', aggregate: '0.75 in' }).satisfied('spacing_clear')).toBe(true)
    expect(aci({ spacing: '1.62 in', aggregate: '0.75 in' }).satisfied('spacing_clear')).toBe(false)
  })

  it.each([
    ['39999 psi', 1],
    ['40000 psi', 0],
    ['100000 psi', 0],
    ['100001 psi', 1],
  ])('bar-choice-aci-318: a strength of %s has %d faults', (f_y, faults) => {
    expect(aci({ f_y }).errors).toHaveLength(faults)
  })
})

describe('bar-choice-en-1992', () => {
  it('bar-choice-en-1992: the floor of 0.0013 governs for weak concrete', () => {
    expect(en({ f_ck: '20 MPa' }).si('rho_min')).toBe(0.0013)
    expect(en({ f_ck: '30 MPa' }).si('rho_min')).toBeCloseTo(0.001506, 6)
  })

  it.each([
    ['wall, vertical', 0.001],
    ['wall, horizontal', 0.0005],
  ])('bar-choice-en-1992: least steel at a face of %s', (member, ratio) => {
    expect(en({ member }).si('A_min')).toBeCloseTo(ratio * 0.25, 12)
  })

  it.each([
    ['slab, main', '130 mm', 390],
    ['slab, main', '250 mm', 400],
    ['slab, main, at the largest moment', '120 mm', 240],
    ['slab, main, at the largest moment', '250 mm', 250],
    ['slab, secondary', '120 mm', 420],
    ['slab, secondary', '250 mm', 450],
    ['wall, vertical', '120 mm', 360],
    ['wall, vertical', '250 mm', 400],
    ['wall, horizontal', '120 mm', 400],
  ])('bar-choice-en-1992: largest spacing of %s in %s is %d mm', (member, thickness, most) => {
    expect(en({ member, thickness }).si('s_most') * 1000).toBeCloseTo(most, 9)
    expect(en({ member, thickness, spacing: `${most} mm` }).satisfied('spacing_most')).toBe(true)
    expect(en({ member, thickness, spacing: `${most + 1} mm` }).satisfied('spacing_most')).toBe(false)
  })

  it('bar-choice-en-1992: no more than 0.04 of the section, half of it at a face of a wall', () => {
    const slab = (spacing: string) => en({ bar_size: '40 mm', thickness: '300 mm', spacing })
    expect(slab('105 mm').satisfied('steel_most')).toBe(true)
    expect(slab('104 mm').satisfied('steel_most')).toBe(false)
    const wall = (spacing: string) => en({ member: 'wall, vertical', bar_size: '40 mm', thickness: '300 mm', spacing })
    expect(wall('210 mm').satisfied('steel_most')).toBe(true)
    expect(wall('209 mm').satisfied('steel_most')).toBe(false)
  })

  it('bar-choice-en-1992: clear distance of 20 mm, the bar, or the aggregate and 5 mm', () => {
    expect(en({ aggregate: '10 mm' }).si('s_clear')).toBeCloseTo(0.02, 12)
    expect(en().si('s_clear')).toBeCloseTo(0.025, 12)
    expect(en({ bar_size: '32 mm' }).si('s_clear')).toBeCloseTo(0.032, 12)
    expect(en({ spacing: '37 mm' }).satisfied('spacing_clear')).toBe(true)
    expect(en({ spacing: '36.9 mm' }).satisfied('spacing_clear')).toBe(false)
  })

  it.each([
    [{ f_ck: '11.9 MPa' }, 1],
    [{ f_ck: '50.1 MPa' }, 1],
    [{ f_yk: '399 MPa' }, 1],
    [{ f_yk: '600 MPa' }, 0],
    [{ f_yk: '601 MPa' }, 1],
  ])('bar-choice-en-1992: %j has %d faults', (more, faults) => {
    expect(en(more).errors).toHaveLength(faults)
  })
})

describe('bar tables', () => {
  const numbers = (cells: readonly (readonly string[])[]) => cells.map(([cell]) => Number(cell))

  // Bar tables (looked up): 8, 10, 12, 16, 20, 25, 32 and 40 mm; mass = 0.00785 kg/m for each mm^2.
  it('bar-choice-en-1992: metric masses are 7850 kg/m3 on the area of the circle', () => {
    for (const [i, phi] of numbers(metricDiameter.cells).entries())
      expect(Math.abs(Number(metricMass.cells[i]?.[0]) - (0.00785 * Math.PI * phi ** 2) / 4)).toBeLessThan(0.0007)
    expect(metricDiameter.cells).toHaveLength(metricBars.length)
  })

  it('bar-choice-aci-318: US areas are those of the circle to two decimals, masses 3.4 lb/ft for each square inch', () => {
    const [areas, masses] = [numbers(usArea.cells), numbers(usMass.cells)]
    for (const [i, phi] of numbers(usDiameter.cells).entries()) {
      const area = (Math.PI * phi ** 2) / 4
      expect(Math.abs((areas[i] ?? 0) - area)).toBeLessThan(0.0051)
      expect(Math.abs((masses[i] ?? 0) / (area * 3.4) - 1)).toBeLessThan(0.002)
    }
    expect(areas).toHaveLength(usBars.length)
  })
})
