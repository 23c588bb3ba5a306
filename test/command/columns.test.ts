import { expect, it } from 'vitest'
import { columns } from '../../src/command/columns.ts'

it('columns: each as wide as its widest cell, in columns of the terminal', () => {
  expect(
    columns(
      ['a', 'long head'],
      [
        ['wide cell', 'x'],
        ['層', 'y'],
      ],
    ),
  ).toBe(['a          long head', '---------  ---------', 'wide cell  x', '層         y'].join('\n'))
})

it('columns: a cell cannot steer the terminal', () => {
  expect(columns(['a'], [['\u001b[2Jgone']])).toBe('a\n--------\n␛[2Jgone'.replace('--------', '-'.repeat(8)))
})
