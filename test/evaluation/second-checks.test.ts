import { describe, expect, it } from 'vitest'
import { resultsData } from '../../src/evaluation/results-data.ts'
import { traceGraph } from '../../src/evaluation/trace-graph.ts'
import { defineModule } from '../../src/modules/module.ts'
import { check, limit, ratio, step } from '../../src/modules/words.ts'
import { fence, type RunText, runText, said } from './run-text.ts'

/** Twice a number, twice over: the second method can be biased. Its checks: one of its own, one that rests on the first's step. */
const twin = defineModule({
  version: '1.0.0',
  cautions: [],
  published: [],
  example: {},
  results: ['y'],
  id: 'twin',
  title: 'Twin',
  asks: 'Is it enough?',
  inputs: {
    x: ratio({ says: 'the number' }),
    bias: ratio({ says: 'error of the second method', default: '0' }),
    need: ratio({ says: 'what is needed' }),
  },
  steps: [step('y', '2 * x', { says: 'twice' }), check('enough', 'y >= need', { says: 'enough' })],
  limits: [limit('x <= 10', { says: 'the number is at most ten', otherwise: 'warn', on: 'x' })],
  second: {
    title: 'By adding',
    says: 'the number and itself',
    limits: [
      limit('z <= 100', { says: 'the sum is at most a hundred', otherwise: 'refuse', on: 'x' }),
      limit('z >= 2', { says: 'the sum is at least two', otherwise: 'warn', on: 'x' }),
    ],
    steps: [
      step('z', 'x + x + bias', { says: 'sum' }),
      check('enough_too', 'z >= need', { says: 'enough by the second method' }),
      check('near', 'z <= 2 * y', { says: 'near the first' }),
    ],
    compare: [{ first: 'y', second: 'z', band: 0.1, says: 'sums' }],
  },
})

const run = (inputs: string): RunText => runText(fence('calc twin t', inputs), { modules: [twin] })
const checksOf = (ran: RunText) => ran.block('t')?.checks ?? []
const doubtsOf = (ran: RunText) => Object.fromEntries(checksOf(ran).map(({ name, doubts }) => [name, doubts]))
const dataOf = (ran: RunText) =>
  resultsData(ran.results, ran.workings, { tool: 't', path: 'trial.md', sha256: 'ab'.repeat(32) }).blocks[0]

describe('checks of a second method', () => {
  it('stand among the checks of their block, numbered like every line', () => {
    const checks = checksOf(run('x: 3\nneed: 5'))
    expect(checks.map(({ number, name, satisfied }) => [number, name, satisfied])).toEqual([
      ['1.02', 'enough', true],
      ['1.04', 'enough_too', true],
      ['1.05', 'near', true],
    ])
  })

  it('are judged: one that is not satisfied is said, whatever the first method found', () => {
    const ran = run('x: 3\nbias: -0.1\nneed: 6')
    expect(checksOf(ran).map(({ satisfied }) => satisfied)).toEqual([true, false, true])
    expect(said(ran.warnings)).toEqual([
      'check-not-satisfied: Not satisfied: enough by the second method (`z >= need`)',
    ])
  })

  it('stand in the results with the method that makes them', () => {
    expect(dataOf(run('x: 3\nneed: 5'))?.checks.map(({ name, method }) => [name, method])).toEqual([
      ['enough', 'first'],
      ['enough_too', 'second'],
      ['near', 'second'],
    ])
  })
})

describe('doubt about a satisfied check', () => {
  const out = ['outside limits']

  it('there is none where all limits are kept and the methods agree', () => {
    expect(doubtsOf(run('x: 10\nneed: 5'))).toEqual({ enough: [], enough_too: [], near: [] })
  })

  it('a limit of the first method casts it on its own checks and on those that rest on its steps', () => {
    expect(doubtsOf(run('x: 10.01\nneed: 5'))).toEqual({ enough: out, enough_too: [], near: out })
  })

  it('a limit of the second method casts it on the second method’s checks alone', () => {
    expect(doubtsOf(run('x: 1\nneed: 1'))).toEqual({ enough: [], enough_too: [], near: [] })
    expect(doubtsOf(run('x: 0.99\nneed: 1'))).toEqual({ enough: [], enough_too: out, near: out })
  })

  it('methods that differ cast it on all', () => {
    const apart = ['methods differ']
    expect(doubtsOf(run('x: 3\nbias: 0.6\nneed: 5'))).toEqual({ enough: [], enough_too: [], near: [] })
    expect(doubtsOf(run('x: 3\nbias: 0.61\nneed: 5'))).toEqual({ enough: apart, enough_too: apart, near: apart })
  })

  it('both can be said at once, and both stand in the results as truths', () => {
    const ran = run('x: 20\nbias: 10\nneed: 5')
    expect(doubtsOf(ran).enough).toEqual(['outside limits', 'methods differ'])
    expect(dataOf(ran)?.checks).toMatchObject([
      { name: 'enough', satisfied: true, outside_limits: true, methods_differ: true },
      { name: 'enough_too', satisfied: true, outside_limits: false, methods_differ: true },
      { name: 'near', outside_limits: true, methods_differ: true },
    ])
  })
})

describe('limits of a second method', () => {
  it('are shown behind the first method’s, each with its method', () => {
    const block = run('x: 0.99\nneed: 1').block('t')
    expect(block?.kind === 'calc' ? block.limits : []).toEqual([
      { says: 'the number is at most ten', kept: true, refuses: false, method: 'first' },
      { says: 'the sum is at most a hundred', kept: true, refuses: true, method: 'second' },
      { says: 'the sum is at least two', kept: false, refuses: false, method: 'second' },
    ])
  })

  it('exceeded, are a warning that names the second method', () => {
    expect(said(run('x: 0.99\nneed: 1').warnings)).toEqual([
      'limit-exceeded: Twin, second method: outside the limit that the sum is at least two',
    ])
  })

  it('that refuse leave the second method out and stop nothing else', () => {
    const kept = run('x: 10\nbias: 80\nneed: 5')
    expect(kept.si('t.z')).toBe(100)
    const ran = run('x: 10\nbias: 80.01\nneed: 5')
    expect(said([...ran.errors, ...ran.warnings])).toEqual([
      'limit-exceeded: Twin, second method left out: outside the limit that the sum is at most a hundred',
    ])
    const block = ran.block('t')
    expect(block).toMatchObject({
      complete: true,
      second: {
        absent: 'left out here, outside the limit that the sum is at most a hundred',
        lines: [],
        comparisons: [],
      },
    })
    expect(checksOf(ran).map(({ name }) => name)).toEqual(['enough'])
    expect([ran.si('t.y'), ran.si('t.z')]).toEqual([20, Number.NaN])
    expect(block?.kind === 'calc' ? block.limits.map(({ kept }) => kept) : []).toEqual([true, false])
  })

  it('that refuse give an author’s own line nothing', () => {
    const ran = runText(`${fence('calc twin t', 'x: 10\nbias: 81\nneed: 5')}${fence('work w', 'u = 2 * t.z')}`, {
      modules: [twin],
    })
    expect(ran.errors.map(({ rule }) => rule)).toEqual(['value-not-finite'])
  })

  it('stand in the trace with the limits of both methods and with what compares the two', () => {
    const ran = run('x: 3\nneed: 5')
    const spots = [...traceGraph(ran.results, ran.workings).values()]
    const of = (kind: string) =>
      spots.filter(spot => spot.kind === kind).map(({ says, value, restsOn }) => [says, value, restsOn])
    expect(of('limit')).toEqual([
      ['limit of t: the number is at most ten', 'kept', ['t.x']],
      ['limit of t, second method: the sum is at most a hundred', 'kept', ['t.z']],
      ['limit of t, second method: the sum is at least two', 'kept', ['t.z']],
    ])
    expect(of('agreement')).toEqual([['the two methods of t: sums', 'agree', ['t.y', 't.z']]])
  })

  it('has in the trace only the comparison that applies, of two that are called alike', () => {
    const { second } = twin
    if (!second) throw new Error('it has a second method')
    const either = defineModule({
      ...twin,
      second: {
        ...second,
        compare: [
          { first: 'y', second: 'z', band: 0.1, says: 'sums', when: { formula: 'x > 5' } },
          { first: 'z', second: 'y', band: 0.1, says: 'sums', when: { formula: 'x <= 5' } },
        ],
      },
    })
    const ran = runText(fence('calc twin t', 'x: 3\nneed: 5'), { modules: [either] })
    const spots = [...traceGraph(ran.results, ran.workings).values()].filter(({ kind }) => kind === 'agreement')
    expect(spots.map(({ restsOn }) => restsOn)).toEqual([['t.z', 't.y']])
  })
})
