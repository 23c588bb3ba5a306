import type { LineMove } from '../comparison/types.ts'

/** Numbers of lines, those that follow one another as a range: `4.02–4.05, 4.09a`. */
export function ranges(numbers: readonly string[]): string {
  const runs: string[][] = []
  for (const number of numbers) {
    const run = runs.at(-1)
    if (run && follows(run.at(-1) ?? '', number)) run.push(number)
    else runs.push([number])
  }
  return runs.map(run => (run.length > 2 ? `${run[0]}–${run.at(-1)}` : run.join(', '))).join(', ')
}

function follows(before: string, number: string): boolean {
  const [a, b] = [before, number].map(text => /^(\d+)\.(\d+)([a-z]*)$/.exec(text))
  if (!a || !b || a[1] !== b[1]) return false
  const step = Number(b[2]) - Number(a[2])
  return step === 1 || (step === 0 && b[3] !== '' && a[3] !== b[3])
}

/** How many lines of each block, in the order of the package. */
export function byBlock(lines: readonly LineMove[]): ReadonlyMap<string, readonly LineMove[]> {
  const blocks = new Map<string, LineMove[]>()
  for (const line of lines) blocks.set(line.block, [...(blocks.get(line.block) ?? []), line])
  return blocks
}
