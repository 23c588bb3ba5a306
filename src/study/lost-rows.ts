import type { Columns } from './columns.ts'
import type { Probes } from './watch.ts'

/** Marks with 1 the rows in which a value is lost, with 0 all others: what `isLost` says of each row. The array is lent. */
export function lostRows({ column, length }: Columns, { living, open, guarded }: Probes): (rows: number) => Uint8Array {
  const lost = new Uint8Array(length)
  const lives = living.map(column)
  const opens = Array.from(open, column)
  const behind = guarded.map(({ guards, slot }) => ({ guards: guards.map(column), numbers: column(slot) }))
  return rows => {
    lost.fill(0, 0, rows)
    for (const alive of lives) for (let row = 0; row < rows; row += 1) if (alive[row] !== 1) lost[row] = 1
    for (const numbers of opens)
      for (let row = 0; row < rows; row += 1) if (Number.isNaN(numbers[row] as number)) lost[row] = 1
    for (const { guards, numbers } of behind)
      for (let row = 0; row < rows; row += 1)
        if (Number.isNaN(numbers[row] as number) && guards.every(guard => guard[row] === 1)) lost[row] = 1
    return lost
  }
}
