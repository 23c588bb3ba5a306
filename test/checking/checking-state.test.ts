import { describe, expect, it } from 'vitest'
import { addComment, addTicks, removeTicks, settleComments } from '../../src/checking/change-record.ts'
import { checkingState } from '../../src/checking/checking-state.ts'
import { chooseSteps } from '../../src/checking/choose-steps.ts'
import type { CheckingRecord } from '../../src/checking/record.ts'
import { defineModule } from '../../src/modules/module.ts'
import { check, limit, ratio } from '../../src/modules/words.ts'
import { fence, runText } from '../evaluation/run-text.ts'
import { solves } from '../evaluation/toy-modules.ts'

const site = (depth: string, basis = 'standpipe') =>
  fence('assume site', `water: { value: ${depth}, basis: ${basis} }\nload: 5 kPa`)
const thrust = (factor = '2', more = '') =>
  fence(
    'work thrust',
    `u = site.water * 10 kN/m^3 to kPa\nq = ${factor} * site.load\n${more}u <= 40 kPa # water on the wall`,
  )
const text = (depth = '2 m', factor = '2', more = '') => `${site(depth)}${thrust(factor, more)}`
const signed = { by: 'J. Okonedo', on: '2026-03-04' }
const nobody: CheckingRecord = new Map()

function ticked(body: string): CheckingRecord {
  const state = checkingState(runText(body).workings, nobody)
  return addTicks(state, { steps: state.steps, signed })
}

/** A check that rests on `x` alone, while its limit and its second method rest on other numbers. */
const root = defineModule({
  ...solves,
  id: 'root',
  inputs: { ...solves.inputs, age: ratio({ says: 'age of the table', default: '1' }) },
  steps: [...solves.steps, check('small', 'x <= 100', { says: 'x is small' })],
  limits: [limit('age <= 5', { says: 'the table is new', otherwise: 'warn', on: 'age' })],
})

const fallenAfter = (record: CheckingRecord, body: string) =>
  checkingState(runText(body).workings, record).steps.flatMap(({ key, fallen }) =>
    fallen.map(({ changed }) => [key, ...changed]),
  )

describe('the state of the checking record', () => {
  it('stands where nothing was changed, and counts', () => {
    const { counts, gone } = checkingState(runText(text()).workings, ticked(text()))
    expect([counts, gone]).toEqual([{ steps: 3, checked: 3, fallen: 0, open: 0 }, []])
  })

  it('falls under a changed assumption at the steps it moved alone, with what changed', () => {
    expect(fallenAfter(ticked(text()), text('2.5 m'))).toEqual([
      ['u', 'inputs', 'result'],
      ['u <= 40 kPa', 'inputs', 'result'],
    ])
  })

  it('falls under a changed formula, the result of which happens to stay', () => {
    expect(fallenAfter(ticked(text()), text('2 m', '(4 / 2)'))).toEqual([['q', 'formula']])
  })

  it('falls where only a doubt at a check comes: a limit is exceeded, or the methods differ', () => {
    const doubted = (body: string, changed: string) => {
      const { workings } = runText(body, { modules: [root] })
      const state = checkingState(workings, nobody)
      const after = checkingState(
        runText(changed, { modules: [root] }).workings,
        addTicks(state, { steps: state.steps, signed }),
      )
      return after.steps.flatMap(({ key, now, fallen }) => fallen.map(({ changed }) => [key, now, ...changed]))
    }
    const body = (more = '') => fence('calc root r', `x: 9\n${more}`)
    expect(doubted(body(), body())).toEqual([])
    expect(doubted(body(), body('age: 8'))).toEqual([['small', 'satisfied but outside limits, ratio 0.090', 'result']])
    expect(doubted(body(), body('bias: 1')).filter(([key]) => key === 'small')).toEqual([
      ['small', 'satisfied but methods differ, ratio 0.090', 'result'],
    ])
    expect(doubted(body('age: 8'), body('age: 8\nbias: 1')).filter(([key]) => key === 'small')).toEqual([
      ['small', 'satisfied but outside limits and methods differ, ratio 0.090', 'result'],
    ])
  })

  it('stands when a line is put before a step, and when the basis of an assumption is reworded', () => {
    expect(fallenAfter(ticked(text()), text('2 m', '2', 'r = site.load / 2\n'))).toEqual([])
    expect(fallenAfter(ticked(text()), `${site('2 m', 'two standpipes')}${thrust()}`)).toEqual([])
  })

  it('tells of a tick whose step is gone, and counts it as fallen', () => {
    const { counts, gone } = checkingState(
      runText(text('2 m', '2', 'r = site.load / 2\n')).workings,
      ticked(text('2 m', '2', 'r = site.load / 2\n')),
    )
    expect([counts.fallen, gone]).toEqual([0, []])
    const after = checkingState(runText(text()).workings, ticked(text('2 m', '2', 'r = site.load / 2\n')))
    expect([after.counts.fallen, after.gone.map(({ block, entry }) => `${block}.${entry.step}`)]).toEqual([
      1,
      ['thrust.r'],
    ])
  })

  it('counts a step ticked by two as checked while one of the ticks stands', () => {
    const first = ticked(text())
    const state = checkingState(runText(text('2.5 m')).workings, first)
    const both = addTicks(state, { steps: state.steps, signed: { by: 'A. Lund', on: '2026-04-01' } })
    const { counts } = checkingState(runText(text('2.5 m')).workings, both)
    expect(counts).toEqual({ steps: 3, checked: 3, fallen: 0, open: 0 })
  })

  it('takes away the ticks of one name and no other', () => {
    const { workings } = runText(text())
    const state = checkingState(workings, ticked(text()))
    const two = addTicks(state, { steps: state.steps, signed: { by: 'A. Lund', on: '2026-04-01' } })
    const both = checkingState(workings, two)
    const left = removeTicks(both, { steps: both.steps, by: 'A. Lund' })
    expect(left).toEqual(ticked(text()))
  })

  it('keeps comments open until they are settled', () => {
    const { workings } = runText(text())
    const state = checkingState(workings, nobody)
    const asked = checkingState(
      workings,
      addComment(state, { steps: state.steps.slice(0, 1), signed, says: 'Salt or fresh?' }),
    )
    expect(asked.counts.open).toBe(1)
    const by = { by: 'M. Aird', on: '2026-03-05' }
    const answered = settleComments(asked, { steps: asked.steps, signed: by, says: 'Fresh' })
    const { counts, steps: now } = checkingState(runText(text()).workings, answered)
    expect([counts.open, now[0]?.comments[0]?.settled?.says]).toEqual([0, 'Fresh'])
  })
})

describe('choosing steps', () => {
  const { steps } = checkingState(runText(text()).workings, nobody)
  it.each([
    ['1.02', ['q']],
    ['1.01-1.02', ['u', 'q']],
    ['1.02..1.03', ['q', 'u <= 40 kPa']],
    ['thrust', ['u', 'q', 'u <= 40 kPa']],
    ['thrust.q', ['q']],
    ['1.03-1.01', []],
    ['site', []],
    ['thrust.none', []],
    ['9.01', []],
  ])('%s', (word, keys) => {
    expect(chooseSteps(steps, word).map(({ key }) => key)).toEqual(keys)
  })
})
