import { describe, expect, it } from 'vitest'
import { passportsOf } from '../../src/evaluation/passport.ts'
import { runCase } from '../../src/evaluation/run-case.ts'
import type { Module, PublishedCase } from '../../src/modules/module.ts'
import { fence, runText } from './run-text.ts'
import { plot, toys } from './toy-modules.ts'

const squared = (answer: string, tolerance?: PublishedCase['tolerance']): PublishedCase => ({
  id: 'squared',
  source: 'multiplication table (computed)',
  status: 'computed',
  says: 'three by four',
  inputs: { a: '3 m', b: '4 m' },
  answers: { area: answer },
  ...(tolerance ? { tolerance } : {}),
})

const proven = (...published: PublishedCase[]): Module => ({ ...plot, published })

describe('published cases', () => {
  const agrees = (answer: string, tolerance?: PublishedCase['tolerance']) =>
    runCase(proven(), squared(answer, tolerance)).answers[0]?.agrees

  it('agree within half a unit of the last printed digit, in whatever unit is printed', () => {
    expect([agrees('12 m^2'), agrees('12.0 m^2'), agrees('12.4 m^2'), agrees('11.9 m^2')]).toEqual([
      true,
      true,
      false,
      false,
    ])
    expect([agrees('12.5 m^2'), agrees('129.2 ft^2'), agrees('129.1 ft^2')]).toEqual([false, true, false])
  })

  it('agree within a stated tolerance, relative or in units of the last digit', () => {
    expect([agrees('12.1 m^2', { relative: 0.01 }), agrees('12.2 m^2', { relative: 0.01 })]).toEqual([true, false])
    expect([agrees('12.1 m^2', { units: 1 }), agrees('12.2 m^2', { units: 1 })]).toEqual([true, false])
  })

  it('an answer that does not come out never agrees', () => {
    const [answer] = runCase(proven(), { ...squared('12 m^2'), inputs: { a: '4 m', b: '3 m' } }).answers
    expect(answer).toMatchObject({ agrees: false, ours: '', value: Number.NaN })
  })
})

describe('passports', () => {
  const sheet = (a: string) =>
    runText(fence('calc plot one', `a: ${a}\nb: 8 m`) + fence('calc branches b', 'x: 2'), {
      modules: [proven(squared('12 m^2'), { ...squared('12.4 m^2'), id: 'wrong' }), ...toys.slice(1)],
    })
  const passports = (a: string) => {
    const ran = sheet(a)
    return [...passportsOf(ran.results, ran.workings)]
  }

  it('one for each module used, in the order of use, each case with both answers', () => {
    const [first, second] = passports('3 m')
    expect([first?.module, second?.module]).toEqual(['plot', 'branches'])
    expect(first?.cases.map(({ answers }) => answers[0])).toMatchObject([
      { published: '12 m²', ours: '12.0 m²', agrees: true },
      { published: '12.4 m²', ours: '12.0 m²', agrees: false },
    ])
    expect(second?.cases).toEqual([])
  })

  it('a use names the inputs that lie outside what the cases span', () => {
    expect(passports('3 m')[0]?.uses).toMatchObject([
      {
        name: 'one',
        id: 'b-one',
        number: '1',
        outside: [{ input: 'b', value: '8 m', tested: 'tested at 4.00 m' }],
      },
    ])
    expect(passports('2 m')[0]?.uses[0]?.outside.map(({ input }) => input)).toEqual(['a', 'b'])
    expect(passports('3000 mm')[0]?.uses[0]?.outside.map(({ input }) => input)).toEqual(['b'])
  })
})
