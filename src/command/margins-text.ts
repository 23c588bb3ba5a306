import { shownWords } from '../evaluation/shown-words.ts'
import type { ShownCheck, ShownEnd, ShownMargin, ShownMargins } from '../study/shown-margins.ts'
import { columns } from './columns.ts'
import { plural } from './count-of.ts'

/** Margins as a table, with what the numbers in it say and one sentence in sum. */
export function marginsText(shown: ShownMargins, { path, canTurn }: { path: string; canTurn: boolean }): string {
  const { margins, unsearched } = shown
  const idle = margins.filter(({ share }) => share === undefined)
  const ended = margins.filter(({ share }) => share !== undefined)
  const parts = [
    ended.length > 0 ? tableOf(ended) : '',
    notesOf(ended),
    idle.length > 0 && canTurn ? `Nothing turns in the whole search: ${idle.map(searchedWords).join(', ')}` : '',
    canTurn ? '' : 'The notebook has no check that could turn',
    unsearched.length > 0 ? `Not searched: ${unsearched.map(({ key, why }) => `${key} (${why})`).join(', ')}` : '',
    `${path}: ${summaryOf(shown)}`,
  ]
  return parts.filter(Boolean).join('\n\n')
}

const searchedWords = ({ key, searched }: ShownMargin): string =>
  `${key} (${shownWords(searched.from)} to ${shownWords(searched.to)})`

const tableOf = (margins: readonly ShownMargin[]): string =>
  columns(
    ['assumption', 'value', 'nearest', 'down to', 'what turns', 'up to', 'what turns'],
    margins.map(margin => [
      margin.key,
      shownWords(margin.value),
      nearestOf(margin),
      shownWords(margin.down.at),
      turnsWords(margin.down),
      shownWords(margin.up.at),
      turnsWords(margin.up),
    ]),
  )

/** `−5.3 %`: the way to the nearer end, rounded towards nought; of a temperature in degrees, since its nought is arbitrary. */
function nearestOf({ si, value, down, up, share = 0 }: ShownMargin): string {
  const isDown = down.kind !== 'none' && (up.kind === 'none' || si - down.si <= up.si - si)
  const sign = isDown ? '−' : '+'
  const { unit } = value
  if (unit.offset === undefined) return `${sign}${tenths(share * 100)} %`
  const degrees = Math.abs((isDown ? down.si : up.si) - si) / unit.factor
  return `${sign}${tenths(degrees)} ${unit.text === 'degF' ? '°F' : 'K'}`
}

const tenths = (value: number): string => (Math.floor(value * 10 + 1e-5) / 10).toFixed(1)

function turnsWords(end: ShownEnd): string {
  if (end.kind === 'none') return 'nothing'
  const what = end.kind === 'refusal' ? 'refused' : end.checks.map(turnName).join(', ')
  return end.inRange ? `${what}, inside its range` : what
}

/** Most turn to not satisfied; what else it comes to is said. */
const turnName = (check: ShownCheck): string =>
  check.becomes === 'not satisfied' ? checkName(check) : `${checkName(check)}, then ${check.becomes}`

const checkName = ({ number, block }: { number: string; block: string }): string => number || block

/** What the numbers and refusals of the table say, each once. */
function notesOf(margins: readonly ShownMargin[]): string {
  const ends = margins.flatMap(({ key, down, up }) => [
    { key, way: 'below', end: down },
    { key, way: 'above', end: up },
  ])
  const checks = new Map(
    ends.flatMap(({ end }) =>
      end.kind === 'turn' ? end.checks.map(check => [checkName(check), `${check.block}: ${check.says}`] as const) : [],
    ),
  )
  const refusals = ends.flatMap(({ key, way, end }) =>
    end.kind === 'refusal' ? [[`refused`, `${key} ${way} ${shownWords(end.at)}: ${end.says}`]] : [],
  )
  const rows = [...[...checks].sort(([a], [b]) => a.localeCompare(b, 'en', { numeric: true })), ...refusals]
  return rows.length > 0 ? columns(['check', 'says'], rows) : ''
}

function summaryOf({ margins, unsearched, runs }: ShownMargins): string {
  const [tightest] = margins
  const inside = margins.filter(({ down, up }) => [down, up].some(end => end.kind !== 'none' && end.inRange))
  const counted = `${plural(margins.length, 'assumption')}, each moved by itself${unsearched.length > 0 ? `, ${unsearched.length} not` : ''}`
  if (!tightest || tightest.share === undefined) return `${counted}; nothing turns (${plural(runs, 'run')})`
  const { down, up } = tightest
  const near = nearestOf(tightest).startsWith('−') ? down : up
  const says = near.kind === 'turn' ? near.checks[0]?.says : near.kind === 'refusal' ? near.says : ''
  const ranges =
    inside.length === 0
      ? 'no margin ends inside its range'
      : `${plural(inside.length, 'margin')} ${inside.length === 1 ? 'ends' : 'end'} inside the range`
  return `${counted}; tightest is ${tightest.key}, ${nearestOf(tightest)} to ${shownWords(near.at)} (${says}); ${ranges} (${plural(runs, 'run')})`
}
