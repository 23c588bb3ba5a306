import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Passport, PassportCase, PassportUse } from '../evaluation/passport.ts'
import { cross, tick } from '../typesetting/marks.ts'
import { prose } from '../typesetting/prose.ts'
import { type Setting, settingIn } from '../typesetting/setting.ts'
import { symbolHtml } from '../typesetting/symbol-html.ts'
import { part } from './part.ts'

/** The published cases that each module reproduces, the printed answer against ours, and whether its uses here lie inside what was tested. */
export function passportSheet(passports: readonly Passport[], setting: Setting): Element {
  if (passports.length === 0) return part('passport', 'Passport', [h('p', 'No module is used.')])
  return part('passport', 'Passport', [
    h('p', [
      'For each module: the published answers that this version gives, as printed, then ours (',
      tick(),
      'where they agree), and the inputs of this package that lie outside the range those cases span.',
    ]),
    h(
      'div.passports',
      passports.map(one => passport(one, settingIn(setting, one))),
    ),
  ])
}

function passport({ module, version, title, cases, uses }: Passport, setting: Setting): Element {
  return h('div.module', [
    h('p.name', [h('b', title), h('span.block-name', ` ${module} ${version}`)]),
    ...bySource(cases).map(one => source(one, setting)),
    ...(uses.length > 0 ? uses.map(one => use(one, setting)) : [h('p.use', 'Not used outside other modules.')]),
  ])
}

/** Neighbouring cases of one source together. */
function bySource(cases: readonly PassportCase[]): PassportCase[][] {
  const together: PassportCase[][] = []
  for (const one of cases) {
    const before = together.at(-1)
    if (before?.[0]?.source === one.source && before[0].status === one.status) before.push(one)
    else together.push([one])
  }
  return together
}

function source(cases: readonly PassportCase[], setting: Setting): Element {
  const [first] = cases
  return h('div.source', [
    h('p.where', first ? prose(`${first.source} (${first.status})`, setting) : []),
    h(
      'ul',
      cases.map(one => caseItem(one, setting)),
    ),
  ])
}

/** `10 halvings: protection factor 1024, ours 1024; halvings in all 10.00, ours 10.00`. */
function caseItem({ says, answers }: PassportCase, setting: Setting): Element {
  return h('li', [
    ...prose(says, setting),
    ...answers.flatMap((answer, index) => [index > 0 ? '; ' : ': ', ...answerWords(answer, setting)]),
  ])
}

function answerWords(
  { says, published, ours, agrees }: PassportCase['answers'][number],
  setting: Setting,
): (string | ElementContent)[] {
  const outcome = agrees ? tick() : h('span.verdict.fails', [cross(), h('b', 'differs')])
  return [...prose(says, setting), ' ', h('span.answer', [published, ', ours ', ours, '\u00a0', outcome])]
}

function use({ id, number, name, outside }: PassportUse, setting: Setting): Element {
  const link = h('a', { href: `#${id}` }, `${number} ${name}`)
  if (outside.length === 0) return h('p.use', [link, ': every input lies inside the tested range.'])
  const listed = outside.flatMap(({ symbol, value, tested }, index) => [
    index > 0 ? '; ' : ': ',
    symbolHtml(symbol, setting),
    ' ',
    ...unparted(value),
    ' (',
    ...unparted(tested),
    ')',
  ])
  return h('p.use', [link, ': ', h('b', 'outside the tested range'), ...listed, '.'])
}

/** Words of which the last number stays on one line with its unit. */
function unparted(words: string): (string | Element)[] {
  const cut = words.lastIndexOf(' ', words.lastIndexOf(' ') - 1) + 1
  return [words.slice(0, cut), h('span.answer', words.slice(cut))]
}
