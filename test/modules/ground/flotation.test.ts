import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { makeWorkings } from '../../../src/evaluation/make-workings.ts'
import { flotation } from '../../../src/modules/ground/flotation.ts'
import { runModule } from '../run-module.ts'

const box = {
  method: 'EN 1997-1 UPL',
  plan_length: '8 m',
  plan_width: '5 m',
  cover: '1.2 m',
  roof: '0.3 m',
  clear: '2.4 m',
  raft: '0.4 m',
  wall: '0.3 m',
  gamma_c: '24 kN/m^3',
  gamma: '17 kN/m^3',
  gamma_sat: '20 kN/m^3',
  water_depth: '1.0 m',
  water_building: '3.0 m',
}
const run = (more: Readonly<Record<string, string>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(flotation, { ...box, ...more }, { units })
const kN = 1000

describe('flotation', () => {
  it('example: evaluates without a warning', () => {
    expect(runModule(flotation, flotation.example).diagnostics).toEqual([])
  })

  it('weight of the box: concrete of roof, walls and raft, worked by hand', () => {
    // roof 40 x 0.3, walls (40 - 7.4 x 4.4) x 2.4, raft 40 x 0.4
    const concrete = 12 + (40 - 7.4 * 4.4) * 2.4 + 16
    expect(run().si('W_box')).toBeCloseTo(24 * kN * concrete, 5)
  })

  it('soil over the roof: moist above the water, submerged below it', () => {
    expect(run().si('W_cover')).toBeCloseTo(40 * (17 * 1.0 + (20 - 9.81) * 0.2) * kN, 5)
    expect(run({ water_depth: '2 m' }).si('W_cover')).toBeCloseTo(40 * 17 * 1.2 * kN, 5)
    expect(run({ water_depth: '0 m' }).si('W_cover')).toBeCloseTo(40 * (20 - 9.81) * 1.2 * kN, 5)
  })

  it('water is counted once: submerged soil with the net uplift, or all the soil and water with the whole uplift', () => {
    const at = run({ water_depth: '0.3 m' })
    const saturated = 40 * (17 * 0.3 + 20 * 0.9) * kN
    expect(at.si('W_cover') + at.si('W_G_fin')).toBeCloseTo(saturated, 5)
    const resultant = at.si('U_net_fin') - at.si('W_cover') - at.si('W_box')
    expect(resultant).toBeCloseTo(at.si('U_fin') - saturated - at.si('W_box'), 5)
  })

  it('a topping that weighs what soil weighs: is as much cover', () => {
    for (const water_depth of ['0 m', '0.5 m', '1.3 m', '1.35 m', '2 m']) {
      const gamma = { gamma: '20 kN/m^3', gamma_sat: '20 kN/m^3', toe: '0.4 m', water_depth }
      const [soil, topped] = [
        run({ ...gamma, cover: '1.4 m' }),
        run({ ...gamma, cover: '1.3 m', topping: '0.1 m', topping_weight: '20 kN/m^3' }),
      ]
      for (const name of ['W_cover', 'z_raft', 'U_net_fin', 'hold_fin', 'F_fin', 'B_fin', 'B_panels_fin'])
        expect(topped.si(name) / soil.si(name), name).toBeCloseTo(1, 9)
      expect(topped.agrees.every(({ difference, band }) => difference <= band)).toBe(true)
    }
  })

  it('a topping without a weight: sets the roof deeper and holds nothing down', () => {
    const [plain, deeper] = [run(), run({ topping: '0.1 m' })]
    expect(deeper.si('z_roof')).toBeCloseTo(1.3, 12)
    expect(deeper.si('W_cover')).toBeCloseTo(plain.si('W_cover'), 6)
    const weighed = run({ topping: '0.1 m', topping_weight: '22 kN/m^3' })
    expect(weighed.si('W_cover') - deeper.si('W_cover')).toBeCloseTo(40 * 0.1 * (22 - 9.81) * kN, 5)
    expect(run({ topping: '0.1 m', topping_weight: '10 kN/m^3' }).errors.map(({ rule }) => rule)).toEqual([
      'value-outside-range',
    ])
  })

  it('any box: uplift less water on top is the displaced water, by volume and by panels', () => {
    const length = (min: number, max: number) => fc.integer({ min, max }).map(n => `${n} cm`)
    fc.assert(
      fc.property(
        fc.record({
          plan_length: length(200, 2000),
          plan_width: length(200, 2000),
          toe: length(0, 150),
          cover: length(0, 400),
          roof: length(15, 150),
          clear: length(150, 450),
          raft: length(15, 150),
          water_depth: length(-200, 1200),
          water_building: length(0, 1200),
        }),
        sizes => {
          const at = run(sizes)
          expect(at.errors.filter(fault => fault.rule !== 'check-not-satisfied')).toEqual([])
          expect(at.agrees).toHaveLength(6)
          for (const one of at.agrees) {
            const slack = one.band * Math.abs(one.first) + 1e-3
            expect(Math.abs(one.second - one.first)).toBeLessThanOrEqual(slack)
          }
        },
      ),
      { numRuns: 60 },
    )
  })

  it('higher water: never makes the box safer', () => {
    const depths = ['6 m', '4 m', '3 m', '2 m', '1.2 m', '0.5 m', '0 m']
    const margins = depths.map(water_depth => {
      const at = run({ water_depth })
      return at.si('hold_fin') - at.si('demand_fin')
    })
    for (const [i, margin] of margins.entries()) {
      if (i > 0) expect(margin).toBeLessThanOrEqual((margins[i - 1] ?? Number.NaN) + 1e-6)
    }
  })

  it('partial factors: total weights with the water in them against the whole uplift, worked by hand', () => {
    const at = run({ water_depth: '0.3 m', toe: '0.5 m', water_building: '3.0 m' })
    const saturated = (depth: number) => 17 * 0.3 + 20 * (depth - 0.3)
    const box_ = 24 * (12 + (40 - 7.4 * 4.4) * 2.4 + 54 * 0.4)
    // cover 1.2 m over 40 m2, toe of 14 m2 under 3.9 m, raft of 54 m2 at 4.3 m
    const total = box_ + 40 * saturated(1.2) + 14 * saturated(3.9)
    expect(at.si('hold_fin')).toBeCloseTo(0.9 * total * kN, 4)
    expect(at.si('demand_fin')).toBeCloseTo(9.81 * 4.0 * 54 * kN, 4)
    expect(at.si('hold_build')).toBeCloseTo(0.9 * (box_ + 9.81 * 0.9 * 14) * kN, 4)
    expect(at.si('demand_build')).toBeCloseTo(9.81 * 1.3 * 54 * kN, 4)
  })

  it('no water at the raft: no uplift, no factor, and the box stays down', () => {
    const at = run({ water_depth: '4.3 m', water_building: '5 m' })
    expect(at.si('U_fin')).toBe(0)
    expect(at.has('F_fin')).toBe(false)
    expect(at.satisfied('stays_down_finished')).toBe(true)
    expect(at.satisfied('stays_down_building')).toBe(true)
    expect(at.errors).toEqual([])
  })

  it('toe: soil over it holds, and uplift acts on it', () => {
    const [plain, toed] = [run(), run({ toe: '0.5 m' })]
    expect(toed.si('W_toe')).toBeGreaterThan(0)
    expect(plain.si('W_toe')).toBe(0)
    expect(toed.si('U_fin') / plain.si('U_fin')).toBeCloseTo((9 * 6) / 40, 9)
    expect(toed.si('F_fin')).toBeGreaterThan(plain.si('F_fin'))
  })

  it('one factor: the required factors are those of Table 3-4 by load condition', () => {
    // EM 1110-2-2100, Table 3-4 (memory): 1.3 usual, 1.2 unusual, 1.1 extreme
    for (const [condition, factor] of [
      ['usual', 1.3],
      ['unusual', 1.2],
      ['extreme', 1.1],
    ] as const) {
      const at = run({ method: 'EM 1110-2-2100', condition_finished: condition, condition_building: condition })
      expect(at.si('F_req_fin')).toBe(factor)
      expect(at.si('F_req_build')).toBe(factor)
      expect(at.satisfied('stays_down_finished')).toBe(at.si('F_fin') >= factor)
      expect(at.si('demand_fin')).toBeCloseTo(factor * at.si('U_net_fin'), 5)
    }
  })

  it('chosen factor: the check turns exactly at the factor the box has', () => {
    const F = run().si('F_fin')
    const at = (factor: number) => run({ method: 'chosen factor', factor: `${factor}` })
    expect(at(F * 0.999).satisfied('stays_down_finished')).toBe(true)
    expect(at(F * 1.001).satisfied('stays_down_finished')).toBe(false)
  })

  it('chosen factor without a factor, or one under 1: refused', () => {
    const missing = run({ method: 'chosen factor' })
    expect(missing.errors.map(fault => fault.rule)).toContain('limit-exceeded')
    expect(run({ method: 'chosen factor', factor: '0.99' }).errors.length).toBeGreaterThan(0)
    expect(run({ method: 'chosen factor', factor: '1' }).errors.filter(f => f.rule !== 'check-not-satisfied')).toEqual(
      [],
    )
  })

  it('safe water depth: at it the box without fill is just safe, with and without its roof', () => {
    for (const method of ['EN 1997-1 UPL', 'EM 1110-2-2100']) {
      const at = run({ method })
      const depth = at.si('z_safe')
      const just = run({ method, water_building: `${depth} m` })
      expect(just.si('demand_build') / just.si('hold_build')).toBeCloseTo(1, 9)
      expect(run({ method, water_building: `${depth - 0.01} m` }).satisfied('stays_down_building')).toBe(false)
      expect(at.si('z_open')).toBeGreaterThan(depth)
    }
  })

  it('friction: left out unless given, and then counted in the finished stage only', () => {
    const [without, with_] = [run(), run({ side_friction: '100 kN' })]
    expect(without.si('side_friction')).toBe(0)
    expect(with_.si('hold_fin') - without.si('hold_fin')).toBeCloseTo(100 * kN, 5)
    expect(with_.si('hold_build')).toBe(without.si('hold_build'))
  })

  it('given weight: replaces the weight from the dimensions', () => {
    const at = run({ box_weight: '900 kN' })
    expect(at.si('W_box')).toBe(900 * kN)
    expect(at.has('V_walls')).toBe(false)
    // the weight of the open box is then the weight given less that of the roof: 900 - 24 x 40 x 0.3
    expect(at.si('W_open')).toBeCloseTo(612 * kN, 5)
    expect(run({ box_weight: '288 kN' }).errors.map(fault => fault.rule)).toContain('limit-exceeded')
    expect(run({ box_weight: '289 kN' }).errors.map(fault => fault.rule)).not.toContain('limit-exceeded')
  })

  // raft and walls of the box above: (16 + (40 - 7.4 x 4.4) x 2.4) x 24 kN, worked by hand
  const open_ = 24 * (16 + (40 - 7.4 * 4.4) * 2.4)

  it('open box: raft and walls against the uplift at the water while building, worked by hand', () => {
    const at = run({ toe: '0.5 m', water_building: '3.0 m' })
    const withToe = 24 * (0.4 * 54 + (40 - 7.4 * 4.4) * 2.4)
    expect(at.si('W_open')).toBeCloseTo(withToe * kN, 5)
    expect(at.si('demand_open')).toBeCloseTo(9.81 * 1.3 * 54 * kN, 4)
    expect(at.si('hold_open')).toBeCloseTo(0.9 * (withToe + 9.81 * 0.9 * 14) * kN, 4)
    expect(run().si('W_open')).toBeCloseTo(open_ * kN, 5)
    expect(run({ method: 'EM 1110-2-2100' }).si('demand_open')).toBeCloseTo(1.3 * 9.81 * 1.3 * 40 * kN, 4)
    expect(run({ method: 'EM 1110-2-2100' }).si('hold_open')).toBeCloseTo(open_ * kN, 5)
  })

  it('open box: the check turns exactly at the depth to which the water must be held', () => {
    for (const method of ['EN 1997-1 UPL', 'EM 1110-2-2100']) {
      const depth = run({ method }).si('z_open')
      const at = (water_building: string) => run({ method, water_building })
      const just = at(`${depth} m`)
      expect(just.si('demand_open') / just.si('hold_open')).toBeCloseTo(1, 9)
      expect(at(`${depth + 0.001} m`).satisfied('stays_down_open')).toBe(true)
      expect(at(`${depth - 0.001} m`).satisfied('stays_down_open')).toBe(false)
    }
  })

  it('open box: water above its rim runs in, so that the rim is the worst', () => {
    const [rim, flood] = [run({ water_building: '1.5 m' }), run({ water_building: '0 m' })]
    expect(flood.si('demand_open')).toBeCloseTo(rim.si('demand_open'), 6)
    expect(flood.si('water_open')).toBeCloseTo(1.5, 12)
    expect(run({ water_building: '1.6 m' }).si('demand_open')).toBeLessThan(rim.si('demand_open'))
  })

  it('open box that floats: flooded, it is held by the water let in, to no more than the level outside', () => {
    const flooded = { open_box: 'flooded on pump failure', water_building: '2.0 m' }
    const at = run(flooded)
    const demand = 9.81 * 2.3 * 40
    expect(at.si('h_flood')).toBeCloseTo((demand - 0.9 * open_) / (0.9 * 9.81 * 7.4 * 4.4), 9)
    expect(at.si('h_outside')).toBeCloseTo(1.9, 12)
    expect(at.satisfied('flooding_holds')).toBe(true)
    expect(() => at.satisfied('stays_down_open')).toThrow()
    const light = run({ ...flooded, gamma_c: '12 kN/m^3', gamma_dst: '1.2' })
    expect(light.satisfied('flooding_holds')).toBe(false)
    const one = run({ ...flooded, method: 'EM 1110-2-2100' })
    expect(one.si('h_flood')).toBeCloseTo((1.3 * demand - open_) / (9.81 * 7.4 * 4.4), 9)
    expect(run({ ...flooded, water_building: '4 m' }).has('h_flood')).toBe(false)
  })

  it('water held: checked against the depth for the open box, and asked for where it alone holds the box', () => {
    const depth = run().si('z_open')
    const held = (water: number) => run({ open_box: 'water held', water_building: '2 m', water_held: `${water} m` })
    expect(held(depth + 0.001).satisfied('held_low_enough')).toBe(true)
    expect(held(depth - 0.001).satisfied('held_low_enough')).toBe(false)
    expect(held(depth + 0.4).si('rise_open')).toBeCloseTo(0.4, 9)
    expect(run({ water_held: '4.8 m' }).satisfied('held_low_enough')).toBe(true)
    expect(run({ open_box: 'water held' }).errors.map(fault => fault.rule)).toContain('limit-exceeded')
  })

  it('partial factors left out: are those recommended in Table A.15 of EN 1997-1', () => {
    // EN 1997-1:2004, Table A.15 (memory): 1.0 on permanent uplift, 0.9 on permanent weight
    expect([run().si('gamma_dst'), run().si('gamma_stb')]).toEqual([1.0, 0.9])
  })

  it('partial factor of the author: is shown as typed, without the source of the default', () => {
    const given = (more: Readonly<Record<string, string>>) => {
      const block = makeWorkings(run(more).results).blocks[0]
      return block?.kind === 'calc' ? block.given.find(({ name }) => name === 'gamma_dst') : undefined
    }
    const table = { key: 'en-1997-1', at: 'Table A.15, recommended value' }
    expect(given({})).toMatchObject({ from: 'default', reference: table })
    expect(given({ gamma_dst: '1.1' })).toMatchObject({ from: 'typed here', value: { digits: '1.1' } })
    expect(given({ gamma_dst: '1.1' })?.reference).toBeUndefined()
  })

  it('walls that meet, no wall at all, water of a wrong dimension: refused', () => {
    expect(run({ wall: '2.5 m' }).errors.map(fault => fault.rule)).toContain('limit-exceeded')
    expect(run({ wall: '2.49 m' }).errors.map(fault => fault.rule)).not.toContain('limit-exceeded')
    for (const wrong of [{ wall: '0 m' }, { water_depth: '3 kPa' }, { gamma_stb: '1.1' }, { gamma_dst: '0.9' }])
      expect(run(wrong).errors.length).toBeGreaterThan(0)
  })

  it('feet and pounds: the same box gives the same factor', () => {
    const [si, us] = [run(), run({}, 'US')]
    expect(us.si('F_fin')).toBeCloseTo(si.si('F_fin'), 12)
    expect(us.shown('W_box')).toMatch(/ lbf$/)
  })

  it('flotation: refuses saturated ground that weighs less than the same ground moist', () => {
    const rulesAt = (gamma_sat: string) => run({ gamma_sat }).errors.map(({ rule }) => rule)
    expect(rulesAt('17 kN/m^3')).toEqual([])
    expect(rulesAt('16.99 kN/m^3')).toEqual(['limit-exceeded'])
  })
})
