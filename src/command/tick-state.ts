import type { CheckedStep } from '../checking/checked-step.ts'
import type { CheckingState, Gone } from '../checking/checking-state.ts'
import { printableLines } from '../diagnostic/printable.ts'
import type { Workings } from '../evaluation/workings.ts'
import { columns } from './columns.ts'
import { plural } from './count-of.ts'

/** How the checking record stands: counts, fallen ticks with what changed, comments, and each block's count. */
export function stateText(state: CheckingState, workings: Workings): string {
  const { steps, checked, fallen, open } = state.counts
  const head = `${checked} of ${plural(steps, 'step')} checked, ${fallen} fallen, ${plural(open, 'open comment')}`
  const parts = [head, blocksText(state, workings), renamedText(state), fallenText(state), commentsText(state)]
  // What stands in the record may come from anybody.
  return printableLines(parts.filter(part => part !== '').join('\n\n'))
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ')

/** `load.g_layer, earth fill` */
const goneName = ({ block, entry: { step, row } }: Gone): string =>
  `${block}.${step}${row === undefined ? '' : `, ${row}`}`

const nameOf = ({ block, key }: CheckedStep): string => `${block}.${key}`

function blocksText({ steps }: CheckingState, workings: Workings): string {
  const rows = workings.blocks.flatMap(block => {
    if (block.kind === 'assume') return []
    const own = steps.filter(step => step.block === block.name)
    if (own.length === 0) return []
    const checked = own.filter(({ standing }) => standing.length > 0)
    const fallen = own.filter(({ standing, fallen }) => standing.length === 0 && fallen.length > 0)
    const by = [...new Set(checked.flatMap(({ standing }) => standing.map(tick => tick.by)))].join(', ')
    return [[block.number, block.name, String(own.length), String(checked.length), String(fallen.length), by]]
  })
  return columns(['no.', 'block', 'steps', 'checked', 'fallen', 'by'], rows)
}

function renamedText({ renamed }: CheckingState): string {
  const lines = renamed.map(
    ({ block, was, steps }) =>
      `${block} was ${was}: ${plural(steps.length, 'step')} ticked there, printed the same here`,
  )
  return lines.length === 0 ? '' : `Renamed blocks\n${lines.join('\n')}`
}

function fallenText({ steps, gone }: CheckingState): string {
  const rows = steps.flatMap(step =>
    step.standing.length > 0
      ? []
      : step.fallen.map(({ tick, changed }) => [
          step.line.number,
          nameOf(step),
          tick.as,
          step.now,
          changed.join(', '),
          `${tick.by}, ${tick.on}`,
        ]),
  )
  const lost = gone.flatMap(({ block, entry }) =>
    'of' in entry
      ? [['', goneName({ block, entry }), entry.as, '', 'the step is gone', `${entry.by}, ${entry.on}`]]
      : [],
  )
  if (rows.length + lost.length === 0) return ''
  return `Fallen ticks\n${columns(['step', 'name', 'ticked as', 'now', 'changed', 'by'], [...rows, ...lost])}`
}

function commentsText({ steps, gone }: CheckingState): string {
  const there = steps.flatMap(step =>
    step.comments.map(comment => ({ at: `${step.line.number} ${nameOf(step)}`, comment })),
  )
  const lost = gone.flatMap(({ block, entry }) =>
    'of' in entry ? [] : [{ at: `${goneName({ block, entry })}, gone`, comment: entry }],
  )
  const all = [...there, ...lost]
  if (all.length === 0) return ''
  const lines = all.map(({ at, comment: { by, on, says, settled } }) => {
    const answer = settled ? `\n  settled by ${settled.by}, ${settled.on}: ${oneLine(settled.says)}` : '\n  open'
    return `${at}\n  ${by}, ${on}: ${oneLine(says)}${answer}`
  })
  return `Comments\n${lines.join('\n')}`
}

/** The same as data. */
export function stateData(state: CheckingState) {
  const { counts, steps, gone } = state
  return {
    format: 1,
    counts,
    steps: steps.map(step => ({
      number: step.line.number,
      block: step.block,
      step: step.key,
      state: step.standing.length > 0 ? 'standing' : step.fallen.length > 0 ? 'fallen' : 'never ticked',
      now: step.now,
      ...(step.name.row === undefined ? {} : { row: step.name.row }),
      ticks: step.standing.map(({ by, on, as, from }) => ({ by, on, as, ...(from === undefined ? {} : { from }) })),
      fallen: step.fallen.map(({ tick: { by, on, as }, changed }) => ({ by, on, as, changed })),
      comments: step.comments,
    })),
    gone: gone.map(({ block, entry }) => ({ block, ...entry })),
  }
}
