import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { CalcWorking, Workings } from '../evaluation/workings.ts'
import { prose } from '../typesetting/prose.ts'
import { anchorLinks } from '../typesetting/reference-html.ts'
import { calcs } from './cover-state.ts'
import { part } from './part.ts'

const always =
  'The results in this package are for review by a licensed engineer under the local code. Nothing here may be built from before that review.'

/** As many cautions as the cover has room for. */
const room = 6

interface Warned {
  readonly says: string
  readonly blocks: readonly CalcWorking[]
}

/** Each caution that applies, said once, with the calculations that call for it. */
function gathered(workings: Workings): Warned[] {
  const blocks = new Map<string, CalcWorking[]>()
  for (const block of calcs(workings)) {
    for (const caution of block.cautions) blocks.set(caution, [...(blocks.get(caution) ?? []), block])
  }
  return [...blocks].map(([says, of]) => ({ says, blocks: of }))
}

/** For the cover: the caution that always stands, then the others, or where they are too many the way to their sheet. */
export function coverCautions(workings: Workings): ElementContent[] {
  const own = gathered(workings)
  const head = h('p', [h('b', always)])
  if (own.length <= room)
    return [
      head,
      ...(own.length > 0
        ? [
            h(
              'ul',
              own.map(one => h('li', prose(one.says))),
            ),
          ]
        : []),
    ]
  const link = h('a', { href: '#cautions' }, `${own.length} cautions`)
  return [head, h('p', [link, ' of the methods used apply to this package. They stand in full on their own sheet.'])]
}

/** The sheet of cautions, where the cover has no room for them. */
export function cautionsSheet(workings: Workings): Element[] {
  const own = gathered(workings)
  if (own.length <= room) return []
  const items = own.map(({ says, blocks }) =>
    h('li', [
      ...prose(says),
      h('span.where', [
        ' ',
        ...anchorLinks(blocks.map(({ id, number, name }) => ({ id, number: `${number} ${name}` }))),
      ]),
    ]),
  )
  return [part('cautions', 'Cautions', [h('p', [h('b', always)]), h('ul', items)])]
}
