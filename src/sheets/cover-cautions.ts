import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Workings } from '../evaluation/workings.ts'
import { prose } from '../typesetting/prose.ts'
import { anchorLinks } from '../typesetting/reference-html.ts'
import { type Setting, settingIn } from '../typesetting/setting.ts'
import { calcs } from './cover-state.ts'
import { isOpen, listed } from './coverage-tables.ts'

const always =
  'The results in this package are for review by a licensed engineer under the local code. Nothing here may be built from before that review.'

/** As many cautions as the cover has room for, and as many calculations that have more. */
const room = 6
const roomForCalculations = 12

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
  const where =
    modules.size > roomForCalculations
      ? ` ${modules.size} calculations, each where its method is used first.`
      : [' these calculations: ', ...anchorLinks([...modules.values()]), '.']
  return [
    head,
    h('p', [`${own.size} cautions of the methods used apply to this package. They stand with`, ...[where].flat()]),
  ]
}

/** For the cover: the limit states and services that nothing answers, as many by name as so many letters hold; nothing where none is open. */
export function coverOpen({ coverage }: Workings, letters: number): Element[] {
  const open = coverage.filter(isOpen)
  if (open.length === 0) return []
  const fits = open.filter((_, index) => listed(open.slice(0, index + 1)).length <= letters)
  const more = open.length - fits.length
  const rest = more > 0 ? `; and ${more} more` : ''
  return [h('p', [h('b', [h('a', { href: '#basis' }, 'Not covered')]), `: ${listed(fits)}${rest}.`])]
}
