import type { Element } from 'hast'
import { h } from 'hastscript'
import type { CheckingState, Gone } from '../checking/checking-state.ts'
import type { CheckerMark } from '../typesetting/checker-mark.ts'
import { commentWords } from '../typesetting/checker-marks.ts'
import { anchorLinks } from '../typesetting/reference-html.ts'
import { part } from './part.ts'

/** The checking record: how many steps are checked, which ticks fell and why, and the register of comments. Nothing where nobody has checked yet. */
export function checkingSheet(state: CheckingState | undefined, marks: ReadonlyMap<string, CheckerMark>): Element[] {
  if (!state || !isBegun(state)) return []
  return [
    part('checking', 'Checking record', [
      h('p', checkingWords(state)),
      ...renamedWords(state),
      ...fallenTable(state),
      ...comments(state, marks),
    ]),
  ]
}

/** True once there is a tick or a comment. */
export const isBegun = ({ steps, gone }: CheckingState): boolean =>
  gone.length > 0 ||
  steps.some(({ standing, fallen, comments }) => standing.length + fallen.length + comments.length > 0)

/** `184 of 212 steps checked, 9 fallen; 1 comment open`. */
export function checkingWords({ counts: { steps, checked, fallen, open } }: CheckingState): string {
  return `${checked} of ${steps} steps checked, ${fallen} fallen; ${open} ${open === 1 ? 'comment' : 'comments'} open`
}

/** Which ticks stand that were made under another name of their block. */
function renamedWords({ renamed }: CheckingState): Element[] {
  return renamed.map(({ block, was, steps }) =>
    h('p.renamed', [
      `Stand from before a block was renamed, ${block} from ${was}, each step printed as it was: `,
      ...anchorLinks(steps.map(({ line }) => line)),
      '.',
    ]),
  )
}

function fallenTable({ steps, gone }: CheckingState): Element[] {
  const rows = steps.flatMap(({ block, line, now, standing, fallen }) =>
    standing.length > 0
      ? []
      : fallen.map(({ tick, changed }) => [
          h('td', h('a', { href: `#${line.id}` }, line.number)),
          h('td', `${block}: ${line.says}`),
          h('td', tick.as),
          h('td', now),
          h('td', changed.join(', ')),
          h('td', `${tick.by}, ${tick.on}`),
        ]),
  )
  const lost = gone.flatMap(({ block, entry }) =>
    'of' in entry
      ? [
          [
            h('td'),
            h('td', goneName(block, entry)),
            h('td', entry.as),
            h('td'),
            h('td', 'the step is gone'),
            h('td', `${entry.by}, ${entry.on}`),
          ],
        ]
      : [],
  )
  if (rows.length + lost.length === 0) return []
  const heads = ['Step', 'Of', 'Ticked as', 'Now', 'Changed', 'Ticked by'].map(name => h('th', { scope: 'col' }, name))
  return [
    h('table.fallen', [
      h('caption', 'Ticks that fell: what they vouched for is printed otherwise now'),
      h('thead', h('tr', heads)),
      h(
        'tbody',
        [...rows, ...lost].map(cells => h('tr', cells)),
      ),
    ]),
  ]
}

function comments({ steps, gone }: CheckingState, marks: ReadonlyMap<string, CheckerMark>): Element[] {
  const rows = steps.flatMap(({ line }) =>
    (marks.get(line.id)?.comments ?? []).map(comment =>
      h('li', { id: `comment-${comment.number}` }, [
        h('a', { href: `#${line.id}` }, line.number),
        ' ',
        ...commentWords(comment),
      ]),
    ),
  )
  const lost = gone.flatMap(({ block, entry }) =>
    'of' in entry
      ? []
      : [
          h(
            'li',
            `${goneName(block, entry)}, a step that is gone. ${entry.by}, ${entry.on}: ${entry.says}${entry.settled ? ` Settled by ${entry.settled.by}: ${entry.settled.says}` : ''}`,
          ),
        ],
  )
  if (rows.length + lost.length === 0) return []
  return [h('h3', 'Comments'), h('ul.comments', [...rows, ...lost])]
}

const goneName = (block: string, { step, row }: Gone['entry']): string =>
  `${block}: ${step}${row === undefined ? '' : `, ${row}`}`
