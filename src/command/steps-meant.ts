import type { CheckedStep } from '../checking/checked-step.ts'
import { chooseSteps, rangeOf } from '../checking/choose-steps.ts'
import { nearestName } from '../diagnostic/nearest-name.ts'
import type { Workings } from '../evaluation/workings.ts'
import { exitStatus } from './exit-status.ts'
import { Stopped } from './stopped.ts'

const forms = 'Name a step (`4.07`), a range (`4.03-4.09`), a block (`roof`) or a value (`roof.M_x`)'

/** The steps that a word of the command line means. Refuses one that means none, and says what would be right. */
export function stepsMeant(word: string, steps: readonly CheckedStep[], workings: Workings): readonly CheckedStep[] {
  const chosen = chooseSteps(steps, word)
  if (chosen.length > 0) return chosen
  const range = rangeOf(word)
  const lost = range && [range.first, range.last].find(number => chooseSteps(steps, number).length === 0)
  if (lost !== undefined) throw called(`No step is numbered \`${lost}\``, nearestOf(lost, steps) ?? forms)
  if (range) throw called(`\`${word}\` runs backwards`, `Write \`${range.last}-${range.first}\``)
  const section = workings.blocks.find(block => 'number' in block && block.number === word)
  if (section) throw called(`\`${word}\` is the number of a block`, `Name the block: \`${section.name}\``)
  if (isAssumption(word, workings))
    throw called(`\`${word}\` is an assumption, which has no step to tick`, 'Tick the steps that use it')
  throw called(`No step is called \`${word}\``, nearestOf(word, steps) ?? forms)
}

function nearestOf(word: string, steps: readonly CheckedStep[]): string | undefined {
  const names = [...new Set(steps.flatMap(({ block, key, line }) => [block, `${block}.${key}`, line.number]))]
  const near = nearestName(word, names)
  return near && `The nearest is \`${near}\``
}

const isAssumption = (word: string, { blocks }: Workings): boolean =>
  blocks.some(
    block =>
      block.kind === 'assume' &&
      (block.name === word || block.rows.some(row => row.number === word || `${block.name}.${row.name}` === word)),
  )

const called = (says: string, help: string): Stopped => new Stopped(exitStatus.called, says, help)
