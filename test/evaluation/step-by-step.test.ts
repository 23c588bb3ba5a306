import { describe, expect, it } from 'vitest'
import type { Line, Printed } from '../../src/evaluation/workings.ts'
import { linesOf, runText } from './run-text.ts'
import { sampleBody } from './sample-sheet.ts'

const { workings } = runText(sampleBody())
const calcs = workings.blocks.filter(block => block.kind === 'calc')

const printedIn = (line: Line): readonly Printed[] => {
  if (line.kind === 'look') return line.interpolations.flatMap(({ working }) => [...working.operands.values()].flat())
  if (line.kind === 'solve')
    return line.takes.flatMap(({ value }) => (typeof value === 'string' ? [] : ([value].flat() as Printed[])))
  return [...(line.working?.operands.values() ?? [])].flat() as Printed[]
}
const made = (line: Line): readonly string[] => (line.kind === 'solve' ? line.gives.map(({ id }) => id) : [line.id])

describe('steps over the rows of a list', () => {
  it('one step has one number, its rows letters in their order', () => {
    const pressure = calcs.find(({ name }) => name === 'pressure')
    const lettered = pressure?.lines.filter(({ number }) => /[a-z]$/.test(number)) ?? []
    expect(lettered.length).toBeGreaterThan(10)
    for (const line of lettered) {
      expect(line.row?.index).toBeGreaterThan(0)
      const before = lettered.filter(({ number }) => number.slice(0, -1) === line.number.slice(0, -1))
      expect(before.map(({ says }) => says)).toEqual(before.map(() => line.says))
      const rows = before.map(({ row }) => row?.index ?? 0)
      expect(rows).toEqual([...rows].sort((a, b) => a - b))
    }
  })

  it('nothing is used before the line that prints it, though a value goes on from row to row', () => {
    const carried = calcs.flatMap(linesOf).filter(({ says }) => says.includes('share that reaches this layer'))
    expect(carried.length).toBeGreaterThan(1)
    for (const block of calcs) {
      const lines = linesOf(block)
      const own = new Set(lines.flatMap(made))
      const known = new Set<string>()
      for (const line of lines) {
        const early = printedIn(line).flatMap(({ to }) => (to && own.has(to) && !known.has(to) ? [to] : []))
        expect(early, `${block.name} ${line.number}`).toEqual([])
        for (const id of made(line)) known.add(id)
      }
    }
  })
})
