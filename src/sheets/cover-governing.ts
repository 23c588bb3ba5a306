import type { Element } from 'hast'
import { h } from 'hastscript'
import { plainNumber } from '../quantity/number-print.ts'
import { ratioBar, verdict } from '../typesetting/marks.ts'
import type { Setting } from '../typesetting/setting.ts'
import { type Checked, type CheckedSection, checkWords, governing, worse } from './gather-checks.ts'

interface Governing {
  readonly title: string
  readonly check: Checked
}

/**
 * For the cover: the check of strength, stability or service that governs each section, in the order of the text; the worst ones
 * where the cover has no room for all; and last the tightest check of geometry of all.
 */
export function coverGoverning(sections: readonly CheckedSection[], room: number, setting: Setting): Element[] {
  const governs = sections.flatMap(({ title, checks }) => entry(title, governing(checks).main))
  const geometry = entry('Geometry', governing(sections.flatMap(({ checks }) => checks)).geometry)
  if (governs.length + geometry.length === 0) return []
  const kept = new Set(governs.toSorted((a, b) => worse(a.check, b.check)).slice(0, room - geometry.length))
  const more = governs.length - kept.size
  const rest = more > 0 ? [h('span.block-name', ` the worst of ${governs.length} sections`)] : []
  return [
    h('table.governs', [
      h('caption', ['What governs each section', ...rest]),
      h(
        'tbody',
        [...governs.filter(one => kept.has(one)), ...geometry].map(one => row(one, setting)),
      ),
    ]),
  ]
}

const entry = (title: string, check: Checked | undefined): Governing[] => (check ? [{ title, check }] : [])

function row({ title, check }: Governing, setting: Setting): Element {
  const { line } = check
  const ratio = line.ratio
    ? [h('td.bar', [ratioBar(line.ratio.value)]), h('td.number', plainNumber(line.ratio.shown.digits))]
    : [h('td', { colSpan: 2 })]
  return h('tr', [
    h('th', { scope: 'row' }, title),
    h('td.meaning', [h('a', { href: `#${line.id}` }, line.number), ' ', ...checkWords(check, setting)]),
    ...ratio,
    h('td', [verdict(line)]),
  ])
}
