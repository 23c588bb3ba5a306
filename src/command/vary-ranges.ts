import { type Swing, type Swings, swingsOf } from '../study/swings.ts'
import { swingsDrawing } from '../study/swings-drawing.ts'
import { sketchFile } from '../typesetting/sketch-file.ts'
import { columns } from './columns.ts'
import type { Surroundings } from './surroundings.ts'
import { type Asked, answerData, known, valueWords } from './vary-answer.ts'
import type { VaryOptions } from './vary-options.ts'
import { writeChart } from './write-chart.ts'

/** Each assumption at the ends of its range: what it does to each measure, the widest first. */
export async function varyRanges(
  around: Surroundings,
  { evaluated, measures }: Asked,
  options: VaryOptions,
): Promise<void> {
  const all = swingsOf(evaluated.results.plan, measures)
  if (options.format === 'json') answerData(around, evaluated, { ranges: all.map(dataOf) })
  else
    around.terminal.answer(
      all.length > 0 ? all.map(textOf).join('\n\n') : 'No check has a ratio: name a value with `--on`',
    )
  const [first] = all
  if (options.svg && first) await writeChart(around, options.svg, sketchFile(swingsDrawing(first)))
}

function dataOf({ measure, base, swings, still }: Swings) {
  return {
    on: measure.name,
    says: measure.says,
    unit: measure.unit.text,
    si: base,
    swings: swings.map(({ variable, atFrom, atTo }) => ({
      assumption: variable.entity.key,
      from: { si: variable.range.from, ...known('result', atFrom) },
      to: { si: variable.range.to, ...known('result', atTo) },
    })),
    still,
  }
}

function textOf({ measure, base, swings, still }: Swings): string {
  const { name, says, unit } = measure
  const head = `${name}${says ? `, ${says}` : ''}: ${valueWords(base, unit)} as written`
  const ends = swings.flatMap(({ atFrom, atTo }) => [atFrom, atTo]).filter(Number.isFinite)
  const scale = { from: Math.min(base, ...ends), to: Math.max(base, ...ends), base }
  const rows = swings.map(swing => {
    const { entity, range } = swing.variable
    const [from, to] = [valueWords(range.from, entity.unit), valueWords(range.to, entity.unit)]
    return [
      entity.key,
      `${from} to ${to}`,
      valueWords(swing.atFrom, unit),
      valueWords(swing.atTo, unit),
      barOf(swing, scale),
    ]
  })
  const table =
    rows.length > 0
      ? columns(['assumption', 'range', 'at the low end', 'at the high end', ''], rows)
      : 'No range moves it'
  return [head, table, still.length > 0 ? `Not moved by ${still.join(', ')}` : ''].filter(Boolean).join('\n')
}

const width = 36

/** The swing as a bar of letters: `L` towards the low end of the assumption, `H` towards the high end, `|` as written. */
function barOf({ atFrom, atTo }: Swing, { from, to, base }: { from: number; to: number; base: number }): string {
  const at = (value: number): number => Math.round(((value - from) / (to - from || 1)) * width)
  const middle = at(base)
  const cells = Array.from({ length: width + 1 }, (_, cell) => {
    if (cell === middle) return '|'
    const reaches = (end: number) => Number.isFinite(end) && (cell < middle ? at(end) <= cell : at(end) >= cell)
    return reaches(atFrom) ? 'L' : reaches(atTo) ? 'H' : ' '
  })
  return cells.join('').trimEnd()
}
