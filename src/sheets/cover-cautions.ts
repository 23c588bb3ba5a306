import type { ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Workings } from '../evaluation/workings.ts'
import { prose } from '../typesetting/prose.ts'
import { anchorLinks } from '../typesetting/reference-html.ts'
import { type Setting, settingIn } from '../typesetting/setting.ts'
import { calcs } from './cover-state.ts'

const always =
  'The results in this package are for review by a licensed engineer under the local code. Nothing here may be built from before that review.'

/** As many cautions as the cover has room for. */
const room = 6

/** For the cover: the caution that always stands, then those of the methods; where they are too many, the calculations they stand with. */
export function coverCautions(workings: Workings, setting: Setting): ElementContent[] {
  const own = new Map(calcs(workings).flatMap(block => block.cautions.map(says => [says, block] as const)))
  const head = h('p', [h('b', always)])
  if (own.size === 0) return [head]
  if (own.size <= room)
    return [
      head,
      h(
        'ul',
        [...own].map(([says, block]) => h('li', prose(says, settingIn(setting, block)))),
      ),
    ]
  // Where each module says its own for the first time.
  const modules = new Map<string, { id: string; number: string }>()
  for (const { module, id, number, cautions } of calcs(workings)) {
    if (cautions.length > 0 && !modules.has(module)) modules.set(module, { id, number })
  }
  return [
    head,
    h('p', [
      `${own.size} cautions of the methods used apply to this package. They stand with their calculations: `,
      ...anchorLinks([...modules.values()]),
      '.',
    ]),
  ]
}
