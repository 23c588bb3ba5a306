import { describe, expect, it } from 'vitest'
import { findTraced } from '../../src/evaluation/find-traced.ts'
import { traceGraph } from '../../src/evaluation/trace-graph.ts'
import { between, reachOf } from '../../src/evaluation/trace-walk.ts'
import { fence, runText } from './run-text.ts'
import { toys } from './toy-modules.ts'

function traced(body: string) {
  const ran = runText(body, { modules: toys })
  const graph = traceGraph(ran.results, ran.workings)
  const node = (id: string) => {
    const found = graph.get(id)
    if (!found) throw new Error(`no \`${id}\` among ${[...graph.keys()].join(', ')}`)
    return found
  }
  return { ...ran, graph, node, find: (name: string) => findTraced(graph, ran, name) }
}

const body =
  fence(
    'assume site',
    'a: { value: 2 m, basis: survey, status: hold, closes: before the pour }\nspare: 1 m\nway: squared',
  ) +
  fence('calc plot p', 'a: site.a\nb: v.long\nnote: spare ground') +
  fence('work v', 'long = 2 * site.a   # longer side\nhalf = p.area / 2\nhalf >= 1 m^2') +
  'It is :value[v.half] large, as :see[p] says.\n'

describe('trace graph', () => {
  it('links every value both ways, over blocks, inputs, checks, limits and the text', () => {
    const { node } = traced(body)
    expect(node('p.a')).toMatchObject({ kind: 'given', restsOn: ['site.a'], formula: 'site.a' })
    expect(node('p.area')).toMatchObject({ kind: 'step', number: '1.01', formula: 'a * b', restsOn: ['p.a', 'p.b'] })
    expect(node('site.a').usedBy).toEqual(['p.a', 'v.long'])
    expect(node('p.area').usedBy).toEqual(['b-p-limit-3', 'b-p-check-1-04', 'v.half'])
    expect(node('v.half').usedBy).toEqual(['b-v-check-2-03', 'm-1'])
    expect(node('m-1')).toMatchObject({ kind: 'text', says: 'It is :value[v.half] large, as :see[p] says.' })
    expect(node('b-v-check-2-03')).toMatchObject({ kind: 'check', value: 'satisfied', formula: 'half >= 1 m^2' })
  })

  it('keeps what a reviewer must know: basis, hold, words typed here', () => {
    const { node } = traced(body)
    expect(node('site.a')).toMatchObject({ number: 'A1', says: 'survey', note: 'hold: before the pour', restsOn: [] })
    expect(node('site.spare')).toMatchObject({ says: 'no basis given', usedBy: [] })
    expect(node('p.note')).toMatchObject({ value: 'spare ground', note: 'typed here', restsOn: [] })
  })

  it('is the same relation read from both ends', () => {
    const { graph } = traced(body)
    for (const { id, restsOn } of graph.values())
      for (const below of restsOn) expect([id, graph.get(below)?.usedBy]).toEqual([id, expect.arrayContaining([id])])
    for (const { id, usedBy } of graph.values())
      for (const above of usedBy) expect([id, graph.get(above)?.restsOn]).toEqual([id, expect.arrayContaining([id])])
  })

  it('a formula given to an input is that input, with the line that worked it out', () => {
    const { node } = traced(fence('calc plot p', 'a: 1 m + 1 m\nb: 4 m'))
    expect(node('p.a')).toMatchObject({ kind: 'given', number: '1.01', formula: '1 m + 1 m', restsOn: [] })
  })

  it('an author’s own table is used by the line that reads in it, and the page says so', () => {
    const { node, workings } = traced(
      fence('work v', 'table q = 0 m, 1; 2 m, 3   # the survey\ny = interpolate(q, 1 m)'),
    )
    expect(node('v.q')).toMatchObject({ kind: 'table', value: '2 points', says: 'the survey', usedBy: ['v.y'] })
    expect(workings.users.get('v.q')).toEqual([{ id: 'v-v-y', number: '1.01' }])
  })

  it('a branch stands between the values that chose it and the lines under it, and a word chooses a branch', () => {
    const { node, graph } = traced(
      fence('assume site', 'way: squared') + fence('calc branches q', 'x: 3\nway: site.way'),
    )
    const branches = [...graph.values()].filter(({ kind }) => kind === 'branch')
    expect(branches.length).toBeGreaterThan(0)
    expect(branches.some(({ usedBy }) => usedBy.length > 0)).toBe(true)
    expect(node('site.way').usedBy).toEqual(['q.way'])
    expect(node('q.way').usedBy.map(id => node(id).kind)).toContain('branch')
  })

  it('a value that was not evaluated stands there without a value', () => {
    const { node } = traced(fence('calc plot p', 'a: 5 m\nb: 4 m') + fence('work v', 'x = 2 * p.area'))
    expect(node('p.area').value).toBeUndefined()
    expect(node('v.x')).toMatchObject({ restsOn: ['p.area'] })
  })

  it('rests on everything below, and nothing else; between two values only what lies on a path', () => {
    const { graph } = traced(body)
    expect([...reachOf(graph, 'v.half', 'down')].sort()).toEqual(
      ['p.a', 'p.area', 'p.b', 'site.a', 'v.half', 'v.long'].sort(),
    )
    const up = between(graph, 'v.long', 'm-1')
    expect([up?.way, [...(up?.ids ?? [])].sort()]).toEqual(['up', ['m-1', 'p.area', 'p.b', 'v.half', 'v.long']])
    expect(between(graph, 'm-1', 'v.long')?.way).toBe('down')
    expect(between(graph, 'site.spare', 'v.half')).toBeUndefined()
  })
})

describe('find traced', () => {
  const { find } = traced(body + fence('calc rows r', 'items: [{ x: 2 m }, { x: 3 m }]'))
  it.each([
    ['p.area', 'p.area'],
    ['1.01', 'p.area'],
    ['1.04', 'b-p-check-1-04'],
    ['A1', 'site.a'],
    ['r.x_2', 'r.x_2'],
  ])('%s is found', (name, id) => expect(find(name)).toEqual({ ok: true, id }))
  it.each([
    ['p.aera', 'No value is called `p.aera`', 'Did you mean `p.area`?'],
    ['half', 'No value is called `half`', 'Did you mean `v.half`?'],
    ['p', '`p` is a block, and one value is wanted', 'Name a value of it, as in `p.a`'],
    ['r.x', '`r.x` is a list, and one value is wanted', 'Name one row of it, as in `r.x_1`'],
    ['3.01', 'Nothing is numbered `3.01`', 'Did you mean `3.01a`, of the first row?'],
    ['9.99', 'Nothing is numbered `9.99`', expect.stringContaining('block.name')],
    ['m-1', 'No value is called `m-1`', expect.stringContaining('block.name')],
    ['', 'No value is called ``', expect.any(String)],
  ])('%s is refused in words', (name, says, help) =>
    expect(find(name)).toEqual({ ok: false, stopped: false, says, help }),
  )
  it('what an error of the notebook stopped is said to be stopped', () => {
    const ran = traced(fence('work v', 'x = nothing.here\ny = 2'))
    expect(ran.find('v.x')).toMatchObject({ ok: false, stopped: true })
    expect(ran.find('v.y')).toEqual({ ok: true, id: 'v.y' })
  })
})
