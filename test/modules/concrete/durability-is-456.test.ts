import { describe, expect, it } from 'vitest'
import { durabilityIs456 } from '../../../src/modules/concrete/durability-is-456.ts'
import { exposureWords } from '../../../src/modules/concrete/is456-durability.ts'
import { runModule } from '../run-module.ts'

const run = (more: Readonly<Record<string, string>> = {}, units: 'SI' | 'US' = 'SI') =>
  runModule(durabilityIs456, { ...durabilityIs456.example, ...more }, { units })
const rules = (ran: ReturnType<typeof run>) => ran.errors.map(({ rule }) => rule)

describe('durability by IS 456', () => {
  it.each(['SI', 'US'] as const)('durability-is-456: the example evaluates without a message, in %s', units => {
    expect(run({}, units).diagnostics).toEqual([])
  })

  // IS 456:2000, Tables 5 and 16 (memory), moderate exposure: 30 mm, M25, 300 kg/m3, 0.50.
  it.each([
    ['covered', 'cover', '30 mm', '29.9 mm'],
    ['strong', 'f_ck', '25 MPa', '24.9 MPa'],
    ['enough_cement', 'cement', '300 kg/m^3', '299 kg/m^3'],
    ['little_water', 'water_cement', '0.50', '0.501'],
  ])('durability-is-456: check %s turns where %s is that of the table', (check, name, just, beyond) => {
    expect(run({ [name]: just }).satisfied(check)).toBe(true)
    expect(run({ [name]: beyond }).satisfied(check)).toBe(false)
  })

  it('durability-is-456: a worse exposure never asks for less', () => {
    const rows = Object.keys(exposureWords).map(exposure => run({ exposure }))
    for (const [index, worse] of rows.slice(1).entries()) {
      const better = rows[index] as ReturnType<typeof run>
      for (const name of ['c_need', 'f_least', 'C_least'])
        expect(worse.si(name)).toBeGreaterThanOrEqual(better.si(name))
      expect(worse.si('r_most')).toBeLessThanOrEqual(better.si('r_most'))
    }
  })

  // IS 456:2000, Tables 5 and 16 (memory); the other rows are published cases of the module.
  it.each([
    ['mild', 20, 20, 300, 0.55],
    ['extreme', 75, 40, 360, 0.4],
  ])('durability-is-456: %s exposure', (exposure, cover, grade, cement, water) => {
    const ran = run({ exposure, largest_bar: '12 mm' })
    expect(ran.si('c_need')).toBeCloseTo(cover / 1000, 9)
    expect(ran.si('f_least')).toBeCloseTo(grade * 1e6, 3)
    expect(ran.si('C_least')).toBeCloseTo(cement, 9)
    expect(ran.si('r_most')).toBeCloseTo(water, 9)
  })

  it('durability-is-456: the cover is never less than the bar, and 50 mm at a footing', () => {
    expect(run({ exposure: 'mild', largest_bar: '20 mm' }).si('c_need')).toBeCloseTo(0.02, 12)
    expect(run({ exposure: 'mild', largest_bar: '32 mm' }).si('c_need')).toBeCloseTo(0.032, 12)
    expect(run({ member: 'footing' }).si('c_need')).toBeCloseTo(0.05, 12)
    expect(run({ member: 'footing', exposure: 'extreme' }).si('c_need')).toBeCloseTo(0.075, 12)
  })

  // Table 6 (memory): 40 kg more for 10 mm, 30 kg less for 40 mm.
  it.each([
    ['10 mm', 340],
    ['20 mm', 300],
    ['40 mm', 270],
  ])('durability-is-456: aggregate of %s asks for %d kg in moderate exposure', (aggregate, least) => {
    expect(run({ aggregate }).si('C_least')).toBeCloseTo(least, 9)
  })

  it('durability-is-456: warns of more than 450 kg of cement', () => {
    const kept = (cement: string) => run({ cement }).limits[0]?.kept
    expect(kept('450 kg/m^3')).toBe(true)
    expect(kept('451 kg/m^3')).toBe(false)
  })

  it.each([[{ f_ck: '19.9 MPa' }], [{ water_cement: '0.19' }], [{ cement: '701 kg/m^3' }], [{ largest_bar: '41 mm' }]])(
    'durability-is-456: refuses %j',
    more => expect(rules(run(more))).toEqual(['value-outside-range']),
  )
})
