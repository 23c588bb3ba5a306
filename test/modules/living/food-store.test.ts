import { describe, expect, it } from 'vitest'
import { foodStore } from '../../../src/modules/living/food-store.ts'
import { calcText } from '../../evaluation/module-text.ts'
import { linesOf, runText } from '../../evaluation/run-text.ts'
import { runModule } from '../run-module.ts'

type Row = Readonly<Record<string, string>>
const grain: Row = {
  mass: '100 kg',
  energy_density: '3500 kcal/kg',
  packed_year: '2026',
  packed_month: '1',
  packed_day: '15',
  shelf: '12',
}
const base: Row = { people: '5 person', days: '20 day', reserve: '0' }
const run = (more: Row = {}, foods: readonly Row[] = [{}], units: 'SI' | 'US' = 'SI') =>
  runModule(foodStore, { ...base, foods: foods.map(food => ({ ...grain, ...food })), ...more }, { units })
const rules = (ran: ReturnType<typeof run>) =>
  ran.diagnostics
    .filter(({ rule }) => rule !== 'check-not-satisfied')
    .map(({ rule, severity }) => `${severity} ${rule}`)
const kcal = 4184

describe('food-store', () => {
  it.each(['SI', 'US'] as const)('food-store: the example evaluates without a fault or warning, in %s', units => {
    expect(runModule(foodStore, foodStore.example, { units }).diagnostics).toEqual([])
  })

  it('food-store: people, days and 2100 kcal', () => {
    expect(run().si('E_use') / kcal).toBeCloseTo(5 * 20 * 2100, 6)
    expect(run({}, [{}], 'US').shown('E_use')).toBe('210000 kcal')
    expect(run().errors).toEqual([])
  })

  it('food-store: food that is just enough is enough', () => {
    expect(run({}, [{ mass: '60 kg' }]).satisfied('stored')).toBe(true)
    expect(run({}, [{ mass: '59.9 kg' }]).satisfied('stored')).toBe(false)
    expect(run({ reserve: '20 percent' }, [{ mass: '72 kg' }]).satisfied('stored')).toBe(true)
    expect(run({ reserve: '20 percent' }, [{ mass: '71.9 kg' }]).satisfied('stored')).toBe(false)
  })

  it('food-store: mass times its energy is the energy; foods add', () => {
    const both = run({}, [{}, { mass: '50 kg', energy_density: '1200 kcal/kg' }])
    expect(both.si('E_have') / kcal).toBeCloseTo(100 * 3500 + 50 * 1200, 6)
    expect(both.si('m_have')).toBeCloseTo(150, 9)
    expect(both.si('m_req') * (both.si('E_have') / both.si('m_have'))).toBeCloseTo(both.si('E_req'), 3)
  })

  it('food-store: twice the people eat twice as much, in half the time', () => {
    expect(run({ people: '10 person' }).si('E_req')).toBeCloseTo(2 * run().si('E_req'), 3)
    expect(run({ people: '10 person' }).si('t_food')).toBeCloseTo(run().si('t_food') / 2, 6)
  })

  it('food-store: the energy of planning is just reached, or just missed', () => {
    expect(run({ energy_rate: '2100 kcal/(day*person)' }).satisfied('rate_enough')).toBe(true)
    expect(run({ energy_rate: '2099 kcal/(day*person)' }).satisfied('rate_enough')).toBe(false)
  })

  it('food-store: food packed on a leap day is to be eaten by 28 February', () => {
    const ran = run({}, [{ packed_year: '2024', packed_month: '2', packed_day: '29' }])
    expect([ran.si('due_year_1'), ran.si('due_month_1'), ran.si('due_day_1')]).toEqual([2025, 2, 28])
  })

  it('food-store: says where a food is counted on for more than five years', () => {
    expect(rules(run({}, [{ shelf: '60' }]))).toEqual([])
    expect(rules(run({}, [{ shelf: '61' }]))).toEqual(['warning limit-exceeded'])
  })

  it.each([
    [{ energy_density: '9100 kcal/kg' }, false],
    [{ energy_density: '9101 kcal/kg' }, true],
    [{ energy_density: '200 kcal/kg' }, false],
    [{ energy_density: '199 kcal/kg' }, true],
    [{ mass: '0 kg' }, true],
    [{ packed_month: '0' }, true],
  ])('food-store: a food of %j is refused: %s', (food, refused) => {
    expect(run({}, [food as Row]).errors.length > 0).toBe(refused)
  })

  it('food-store: a date that is none is refused', () => {
    expect(run({}, [{ packed_month: '4', packed_day: '31' }]).errors.length).toBeGreaterThan(0)
  })

  it.each([
    ['energy_rate', '1199 kcal/(day*person)'],
    ['energy_rate', '6001 kcal/(day*person)'],
    ['reserve', '-0.01'],
    ['days', '401 day'],
  ])('food-store: refuses %s of %s', (name, value) => {
    expect(run({ [name]: value }).errors.map(({ rule }) => rule)).toContain('value-outside-range')
  })
})

describe('food-store: in print', () => {
  it('food-store: a date is printed as whole numbers', () => {
    const block = runText(calcText('food-store', 'it', foodStore.example)).block('it')
    const dates = linesOf(block).flatMap(line => (line.kind === 'solve' ? line.gives : []))
    expect(dates.slice(0, 3).map(({ printed }) => printed.shown.digits)).toEqual(['2031', '3', '10'])
  })
})
