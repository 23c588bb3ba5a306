import { describe, expect, it } from 'vitest'
import { assumptionsOf } from '../../src/study/assumptions.ts'
import { columns, rowsOf } from '../../src/study/columns.ts'
import { sharesFrom } from '../../src/study/draw.ts'
import { lostRows } from '../../src/study/lost-rows.ts'
import { watchOf } from '../../src/study/watch.ts'
import { exampleOf, examples, plainly } from './plainly.ts'

const samples = 300

describe.each(examples)('columns, in %s', name => {
  const example = exampleOf(name)
  const { variables } = assumptionsOf(example)
  const shares = sharesFrom(7)
  const start = variables.map(({ entity }) => example.start[entity.slot] as number)
  // One assumption far off in most samples, so that every method refuses at times; now and then all of them within their ranges.
  const drawn = Array.from({ length: samples }, (_, at) =>
    variables.map(({ range }, index) => {
      const share = shares()
      const si = start[index] as number
      if (at % 8 === 0) return range ? range.from + share * (range.to - range.from) : si
      return Math.floor(at * 1.37) % variables.length === index ? si * (4 * share - 0.5) : si
    }),
  )
  const plain = drawn.map(values =>
    plainly(example, new Map(variables.map(({ entity }, index) => [entity.slot, values[index] as number]))),
  )
  // Not a whole number of chunks, and other values in the same columns before.
  const runs = columns(
    example,
    variables.map(({ entity }) => entity),
    64,
  )
  const watch = watchOf(runs)
  const lostIn = lostRows(runs, watch.probes)
  const every = rowsOf(runs, example.start.keys())
  const rows: Float64Array[] = []
  const lost: boolean[] = []
  for (let from = 0; from < samples; from += runs.length) {
    const chunk = drawn.slice(from, from + runs.length)
    runs.at(
      variables.map((_, index) => Float64Array.from(chunk, values => values[index] as number)),
      chunk.length,
    )
    lost.push(...Array.from(lostIn(chunk.length).subarray(0, chunk.length), is => is === 1))
    rows.push(...chunk.map((_, row) => every(row).slice()))
  }

  it('every slot of every sample has the bits of a plain run', () => {
    const differ = rows.flatMap((row, at) =>
      row.findIndex((si, slot) => !Object.is(si, plain[at]?.[slot])) >= 0 ? [at] : [],
    )
    expect(differ).toEqual([])
    expect(rows.length).toBe(samples)
  })

  it('a sample is lost where it is lost in a plain run, and some are', () => {
    expect(lost).toEqual(plain.map(watch.isLost))
    expect(lost.filter(is => is).length).toBeGreaterThan(samples / 20)
    expect(lost.filter(is => !is).length).toBeGreaterThan(samples / 20)
  })

  it('more than a third of the methods refuse in some sample', () => {
    const alive = example.blocks.flatMap(block => (block?.kind === 'calc' ? [block.alive] : []))
    const dead = alive.filter(slot => rows.some(row => row[slot] === 0))
    expect(dead.length).toBeGreaterThan(alive.length / 3)
  })
})

it('columns refuse a value that is not finite', () => {
  const example = exampleOf('kelder-lock')
  const [variable] = assumptionsOf(example).variables
  if (!variable) throw new Error('no assumption')
  const runs = columns(example, [variable.entity], 4)
  expect(() => runs.at([Float64Array.of(1, Number.NaN)], 2)).toThrow('cannot be NaN')
  expect(() => runs.at([Float64Array.of(1, Number.NaN)], 1)).not.toThrow()
})
