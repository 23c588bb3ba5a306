import { describe, expect, it } from 'vitest'
import { messagesSheet } from '../../src/sheets/messages-sheet.ts'
import { textOf } from '../../src/sheets/pencil/find-elements.ts'
import { runText } from '../evaluation/run-text.ts'

const block = '```assume a\ndepth: { value: 3 m, basis: brief, range: 1 m to 2 m }\n```\n'
const rowsOf = (text: string): string[] => {
  const { workings, plan } = runText(text)
  const [sheet] = messagesSheet({ workings, notebook: plan.notebook }, [])
  return sheet
    ? textOf(sheet)
        .split(/(?=\d+:\d+)/)
        .slice(1)
    : []
}

describe('the sheet of warnings', () => {
  it('names the block that a message points into, by its name and number', () => {
    expect(rowsOf(block)[0]).toMatch(/^\d+:\d+\s*a\s*warning/)
    expect(rowsOf('```work w\nx = 1 m\ny = x + 1 s\n```\n')[0]).toMatch(/^\d+:\d+\s*1 w\s*error/)
  })

  it('names none for a message about the prose behind a block', () => {
    expect(rowsOf(`${block}\nIt is :value[a.width] wide.\n`)[1]).toMatch(/^\d+:\d+\s*error/)
  })

  it('is not there where there is nothing to say', () => {
    expect(rowsOf('```assume a\ndepth: { value: 3 m, basis: brief }\n```\n')).toEqual([])
  })
})
