import { nearestName } from '../diagnostic/nearest-name.ts'
import { numberLines } from '../evaluation/anchors.ts'
import { readLiteral } from '../evaluation/literal.ts'
import type { Entity, Plan } from '../evaluation/plan-types.ts'
import { fromUnit } from '../quantity/to-unit.ts'
import { one } from '../quantity/unit.ts'
import { type SweepRow, sweep } from '../study/sweep.ts'
import { sweepDrawing } from '../study/sweep-drawing.ts'
import { sketchFile } from '../typesetting/sketch-file.ts'
import { columns } from './columns.ts'
import { exitStatus } from './exit-status.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'
import { type Asked, answerData, known, valueWords } from './vary-answer.ts'
import type { VaryOptions } from './vary-options.ts'
import { writeChart } from './write-chart.ts'

/** One assumption from end to end: results, and which checks are not satisfied. */
export async function varySweep(
  around: Surroundings,
  { evaluated, measures }: Asked,
  options: VaryOptions,
): Promise<void> {
  const { results } = evaluated
  const { entity, from, to, places } = readSweep(results.plan, options.sweep ?? '')
  const rows = sweep(results.plan, entity, { from, to, places, measures })
  const { lines } = numberLines(results)
  const failing = (row: SweepRow): string[] => row.failing.map(check => lines.get(check)?.number ?? check.says)
  if (options.format === 'json') {
    const data = rows.map(row => ({
      si: row.si,
      refused: row.lost,
      results: row.measures.map((si, index) => ({ on: measures[index]?.name, ...known('si', si) })),
      notSatisfied: failing(row),
    }))
    answerData(around, evaluated, { sweep: { assumption: entity.key, unit: entity.unit.text, rows: data } })
  } else {
    const heads = [entity.key, ...measures.map(({ name }) => name), 'not satisfied']
    const cells = rows.map(row => [
      valueWords(row.si, entity.unit),
      // A demand that helps has no ratio, though no method refuses.
      ...row.measures.map((si, index) =>
        row.lost || Number.isFinite(si) ? valueWords(si, measures[index]?.unit ?? one) : 'none',
      ),
      row.lost ? 'a method refuses' : failing(row).join(', ') || 'none',
    ])
    around.terminal.answer(columns(heads, cells))
  }
  if (options.svg) await writeChart(around, options.svg, sketchFile(sweepDrawing({ entity, measures, rows })))
}

const form =
  'Write `--sweep site.cover=0.8m..1.2m/9`: the assumption, both ends, and in how many places (11 where left out)'

function readSweep(plan: Plan, text: string): { entity: Entity; from: number; to: number; places: number } {
  const [, name = '', first = '', last = '', count = '11'] =
    /^\s*([^=]+?)\s*=\s*(.+?)\s*\.\.\s*(.+?)(?:\s*\/\s*(\d+))?\s*$/.exec(text) ?? []
  const entity = plan.names.get(name)
  if (entity?.kind !== 'number' || entity.origin !== 'assumption')
    throw name ? noAssumption(plan, name) : called(`\`${text}\` is no sweep`)
  const by = plan.chosen.get(entity)
  if (by !== undefined)
    throw new Stopped(
      exitStatus.called,
      `\`${name}\` is not swept: \`${by}\` takes it from a list`,
      'Write another value to see what it changes',
    )
  const [from, to, places] = [endOf(entity, first), endOf(entity, last), Number(count)]
  if (from === to) throw called(`A sweep goes from one value to another, not from \`${first}\` to \`${last}\``)
  if (places < 2 || places > 1000) throw called(`A sweep has 2 to 1000 places, not ${count}`)
  return { entity, from, to, places }
}

function noAssumption(plan: Plan, name: string): Stopped {
  const keys = [...plan.names.values()].flatMap(each =>
    each.kind === 'number' && each.origin === 'assumption' ? [each.key] : [],
  )
  const near = nearestName(name, keys)
  return new Stopped(
    exitStatus.called,
    `No assumption that is a number is called \`${name}\``,
    near ? `The nearest is \`${near}\`` : form,
  )
}

/** A quantity, or a number alone in the unit that the author typed. */
function endOf(entity: Entity, text: string): number {
  const literal = readLiteral(text)
  if (literal && literal.dimension === entity.dimension && literal.point === entity.point) return literal.si
  if (literal && literal.dimension === one.dimension && literal.unit.text === '')
    return fromUnit(Number(literal.digits), entity.unit)
  throw called(`\`${text}\` is no value that \`${entity.key}\` could have`)
}

const called = (says: string): Stopped => new Stopped(exitStatus.called, says, form)
