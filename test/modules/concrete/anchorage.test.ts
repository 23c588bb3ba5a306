import { describe, expect, it } from 'vitest'
import { anchorageAci318 } from '../../../src/modules/concrete/anchorage-aci-318.ts'
import { anchorageEn1992 } from '../../../src/modules/concrete/anchorage-en-1992.ts'
import { anchorageIs456 } from '../../../src/modules/concrete/anchorage-is-456.ts'
import type { Module } from '../../../src/modules/module.ts'
import { runModule } from '../run-module.ts'

type More = Readonly<Record<string, string>>
const runs =
  (module: Module) =>
  (more: More = {}) =>
    runModule(module, { ...module.example, ...more })
const [is, aci, en] = [runs(anchorageIs456), runs(anchorageAci318), runs(anchorageEn1992)]
const rules = (ran: ReturnType<typeof is>) => ran.errors.map(({ rule }) => rule)
const inches = (metres: number) => metres / 0.0254

describe.each([
  ['anchorage-is-456', anchorageIs456, 'L_req', 'L_lap'],
  ['anchorage-aci-318', anchorageAci318, 'l_d', 'l_st'],
  ['anchorage-en-1992', anchorageEn1992, 'l_bd', 'l_0'],
] as const)('%s', (id, module, needed, lap) => {
  const run = runs(module)

  it.each(['SI', 'US'] as const)(`${id}: the example evaluates without a message, in %s`, units => {
    expect(runModule(module, module.example, { units }).diagnostics).toEqual([])
  })

  it(`${id}: a bar of just the length needed is anchored, a shorter one is not`, () => {
    const l = run().si(needed)
    expect(run({ available: `${l} m` }).satisfied('anchored')).toBe(true)
    expect(run({ available: `${l * 0.999} m` }).satisfied('anchored')).toBe(false)
  })

  it(`${id}: a lap of just the length needed will do, a shorter one not, and none planned is not judged`, () => {
    const l = run().si(lap)
    expect(run({ lap_planned: `${l} m` }).satisfied('lapped')).toBe(true)
    expect(run({ lap_planned: `${l * 0.999} m` }).satisfied('lapped')).toBe(false)
    const { lap_planned: _, ...without } = module.example
    expect(() => runModule(module, without).satisfied('lapped')).toThrow(/no check/)
  })
})

describe('anchorage-is-456', () => {
  const length = (more: More) => is(more).si('L_d') / 0.012

  it('anchorage-is-456: bends count 8 diameters, hooks 16, and never below nothing', () => {
    const straight = is({ end: 'straight' }).si('L_req')
    expect(straight).toBe(is().si('L_d'))
    expect(straight - is({ end: 'bend of 90 degrees' }).si('L_req')).toBeCloseTo(8 * 0.012, 12)
    expect(straight - is({ end: 'hook of 180 degrees' }).si('L_req')).toBeCloseTo(16 * 0.012, 12)
    expect(is({ end: 'hook of 180 degrees', used: '0.1' }).si('L_req')).toBe(0)
  })

  it('anchorage-is-456: compression has a quarter more bond, plain bars no ribs', () => {
    expect(length({ end: 'straight' }) / length({ force: 'compression', end: 'straight' })).toBeCloseTo(1.25, 9)
    // 0.87 x 250 / (4 x 1.5)
    expect(length({ steel: 'Fe 250' })).toBeCloseTo(36.25, 6)
    expect(length({ used: '0.5' }) / length({})).toBeCloseTo(0.5, 9)
  })

  // cl. 26.2.5.1 (memory): bending L_d or 30 diameters, direct tension 2 L_d, compression L_d or 24 diameters.
  it.each([
    ['bending', '1', 45.3125],
    ['bending', '0.5', 30],
    ['direct tension', '1', 90.625],
    ['direct tension', '0.1', 30],
    ['compression', '1', 36.25],
    ['compression', '0.5', 24],
  ])('anchorage-is-456: lap of a bar in %s, part %s used at the lap, is %d diameters', (force, used, diameters) => {
    expect(is({ force, lap_used: used, end: 'straight' }).si('L_lap') / 0.012).toBeCloseTo(diameters, 6)
  })

  it('anchorage-is-456: the place of the lap lengthens it by 1.4 and 2', () => {
    const lap = (lap_place: string) => is({ lap_place }).si('L_lap')
    expect(lap('top or corner') / lap('ordinary')).toBeCloseTo(1.4, 12)
    expect(lap('top and corner') / lap('ordinary')).toBeCloseTo(2, 12)
  })

  it('anchorage-is-456: no lap is below 200 mm', () => {
    expect(is({ bar_size: '6 mm', lap_used: '0.2' }).si('L_lap')).toBeCloseTo(0.2, 12)
  })

  it('anchorage-is-456: a bar that works less at the section has no shorter lap', () => {
    expect(is({ used: '0.5' }).si('L_lap')).toBe(is().si('L_lap'))
    expect(is({ lap_used: '0.9' }).si('L_d')).toBe(is().si('L_d'))
  })

  it('anchorage-is-456: a bend in compression is refused', () => {
    expect(rules(is({ force: 'compression' }))).toEqual(['limit-exceeded'])
    expect(rules(is({ force: 'compression', end: 'straight' }))).toEqual([])
  })

  it('anchorage-is-456: laps of bars beyond 36 mm are refused', () => {
    expect(rules(is({ bar_size: '36 mm' }))).toEqual([])
    expect(rules(is({ bar_size: '36.1 mm' }))).toEqual(['limit-exceeded'])
  })

  it.each([[{ bar_size: '4.9 mm' }], [{ bar_size: '40.1 mm' }], [{ used: '1.01' }], [{ used: '0' }]])(
    'anchorage-is-456: refuses %j',
    more => {
      expect(rules(is({ ...more, lap_planned: '2 m' }))).toContain('value-outside-range')
    },
  )
})

describe('anchorage-en-1992', () => {
  // ICE manual (looked up): factors on the lengths of C25/30 for other concretes, (25 / f_ck)^(2/3).
  it.each([
    ['30 MPa', 0.89],
    ['35 MPa', 0.8],
    ['40 MPa', 0.73],
    ['50 MPa', 0.63],
  ])('anchorage-en-1992: concrete of %s needs %d of the length of C25/30', (f_ck, printed) => {
    const factor = en({ f_ck }).si('l_b_rqd') / en({ f_ck: '25 MPa' }).si('l_b_rqd')
    expect(Math.abs(factor - printed)).toBeLessThanOrEqual(0.005)
  })

  it('anchorage-en-1992: poor bond needs as much more as its factor says, large bars more', () => {
    expect(en({ bond: 'poor' }).si('l_b_rqd') / en({ bond: 'good' }).si('l_b_rqd')).toBeCloseTo(1 / 0.7, 9)
    const per = (bar_size: string) => en({ bar_size, cover: '45 mm', lap_planned: '2 m' }).si('f_bd')
    expect(per('32 mm')).toBeCloseTo(per('12 mm'), 6)
    const { lap_planned: _, ...without } = anchorageEn1992.example
    const large = runModule(anchorageEn1992, { ...without, bar_size: '40 mm' })
    expect(large.si('f_bd') / per('12 mm')).toBeCloseTo(0.92, 9)
  })

  // Table 8.2 (memory), by hand, for 12 mm.
  it.each([
    ['straight', '12 mm', 1, 1],
    ['straight', '24 mm', 1, 0.85],
    ['straight', '60 mm', 1, 0.7],
    ['bent', '36 mm', 1, 1],
    ['bent', '48 mm', 0.7, 0.85],
    ['bent', '90 mm', 0.7, 0.7],
  ])('anchorage-en-1992: %s end, cover %s', (end, cover, form, depth) => {
    const ran = en({ end, cover })
    expect(ran.si('alpha_1')).toBe(form)
    expect(ran.si('alpha_2')).toBeCloseTo(depth, 9)
  })

  it('anchorage-en-1992: a bar in compression has no factors and a higher floor', () => {
    const ran = en({ force: 'compression', cover: '90 mm' })
    expect(ran.si('l_bd')).toBeCloseTo(ran.si('l_b_rqd'), 12)
    expect(ran.si('l_b_min') / ran.si('l_b_rqd')).toBeCloseTo(0.6, 9)
    expect(en({ cover: '90 mm' }).si('l_b_min') / ran.si('l_b_rqd')).toBeCloseTo(0.3, 9)
  })

  it('anchorage-en-1992: the floors of anchorage and lap', () => {
    const ran = en({ used: '0.05', lap_used: '0.05', bar_size: '8 mm' })
    expect(ran.si('l_bd')).toBeCloseTo(0.1, 12)
    expect(ran.si('l_0')).toBeCloseTo(0.2, 12)
    expect(en({ used: '0.05', bar_size: '20 mm' }).si('l_bd')).toBeCloseTo(0.2, 12)
    expect(en({ lap_used: '0.05', bar_size: '20 mm' }).si('l_0')).toBeCloseTo(0.3, 12)
  })

  // 8.7.3(1): the lap goes by the stress where the bars are lapped, and not by that of the section that is anchored.
  it('anchorage-en-1992: a bar that works less at the section has no shorter lap, one that works less at the lap has', () => {
    const full = en()
    expect(en({ used: '0.5' }).si('l_0')).toBe(full.si('l_0'))
    expect(en({ used: '0.5' }).si('l_b_rqd') / full.si('l_b_rqd')).toBeCloseTo(0.5, 12)
    expect(en({ lap_used: '0.8' }).si('l_0') / full.si('l_0')).toBeCloseTo(0.8, 12)
    expect(en({ lap_used: '0.8' }).si('l_bd')).toBe(full.si('l_bd'))
    expect(rules(en({ lap_used: '1.01' }))).toContain('value-outside-range')
  })

  it.each([
    [{ bar_size: '32 mm' }, []],
    [{ bar_size: '32.1 mm' }, ['limit-exceeded']],
    [{ cover: '6 mm' }, []],
    [{ cover: '5.9 mm' }, ['limit-exceeded']],
    [{ f_ck: '50.1 MPa' }, ['value-outside-range']],
    [{ f_yk: '601 MPa' }, ['value-outside-range']],
  ])('anchorage-en-1992: %j', (more, said) => {
    expect(rules(en(more))).toEqual(said)
  })
})

describe('anchorage-aci-318', () => {
  const diameters = (more: More) => aci({ bar_size: 'No. 8', lap_planned: '9 ft', ...more }).si('l_d') / 0.0254

  // Table 25.4.2.3 and 25.4.2.5 (memory), by hand.
  it.each([
    [{}, 47.43],
    [{ cover: '0.9 in' }, 71.15],
    [{ spacing: '2.9 in' }, 71.15],
    [{ casting: 'top' }, 61.66],
    [{ grade: 'Grade 80' }, 72.73],
    [{ grade: 'Grade 100' }, 102.77],
    [{ grade: 'Grade 40' }, 31.62],
    [{ f_c: '5000 psi' }, 42.43],
  ])('anchorage-aci-318: No. 8 with %j needs %d in', (more, printed) => {
    expect(diameters(more)).toBeCloseTo(printed, 1)
  })

  it('anchorage-aci-318: bars to No. 6 need four fifths; close ones half as much again; twelve inches at least', () => {
    const each = (bar_size: string, more: More = {}) =>
      inches(aci({ bar_size, ...more }).si('l_d')) / inches(aci({ bar_size }).si('phi'))
    expect(each('No. 6') / each('No. 7')).toBeCloseTo(0.8, 9)
    expect(each('No. 6', { cover: '0.7 in' }) / each('No. 6')).toBeCloseTo(1.5, 9)
    expect(inches(aci({ bar_size: 'No. 3', f_c: '10000 psi' }).si('l_d'))).toBeCloseTo(12, 9)
  })

  it('anchorage-aci-318: class A laps are as long as the bar, class B 1.3 times', () => {
    expect(aci({ lap_class: 'class A' }).si('l_st')).toBe(aci().si('l_d'))
    expect(aci().si('l_st') / aci().si('l_d')).toBeCloseTo(1.3, 12)
  })

  it('anchorage-aci-318: hooks close together need 1.6 times, and the floors hold', () => {
    const hook = (more: More) =>
      inches(aci({ end: 'hooked', bar_size: 'No. 8', lap_planned: '9 ft', ...more }).si('l_dh'))
    expect(hook({ spacing: '5.9 in' }) / hook({ spacing: '6 in' })).toBeCloseTo(1.6, 9)
    expect(hook({ f_c: '6000 psi' })).toBeCloseTo(60000 / 55 / Math.sqrt(6000), 6)
    expect(hook({ bar_size: 'No. 3' })).toBeCloseTo(6, 9)
    const ran = aci({ end: 'hooked', available: '12 in', bar_size: 'No. 4' })
    expect(ran.satisfied('anchored')).toBe(true)
    expect(
      aci({ end: 'hooked', available: `${ran.si('l_dh') * 0.999} m`, bar_size: 'No. 4' }).satisfied('anchored'),
    ).toBe(false)
  })

  it.each([
    [{ spacing: '1.63 in' }, []],
    [{ spacing: '1.62 in' }, ['limit-exceeded']],
    [{ bar_size: 'No. 11' }, []],
    [{ bar_size: 'No. 14' }, ['limit-exceeded']],
    [{ cover: '0.32 in' }, []],
    [{ cover: '0.31 in' }, ['limit-exceeded']],
    [{ f_c: '2499 psi' }, ['value-outside-range']],
    [{ f_c: '10001 psi' }, ['value-outside-range']],
  ])('anchorage-aci-318: %j', (more, said) => {
    expect(rules(aci(more))).toEqual(said)
  })

  it('anchorage-aci-318: hooks of bars beyond No. 11 are refused, straight bars without a lap are not', () => {
    const { lap_planned: _, ...without } = anchorageAci318.example
    const large = (end: string, bar_size: string) =>
      rules(runModule(anchorageAci318, { ...without, end, bar_size, spacing: '12 in' }))
    expect(large('hooked', 'No. 11')).toEqual([])
    expect(large('hooked', 'No. 14')).toEqual(['limit-exceeded'])
    expect(large('straight', 'No. 14')).toEqual([])
  })
})
