import type { Notebook, Requirement, TitleBlock, Written } from '../notebook/types.ts'
import type { Edit } from './edit.ts'

const keys: readonly (readonly [string, keyof TitleBlock])[] = [
  ['title', 'title'],
  ['project', 'project'],
  ['number', 'number'],
  ['revision', 'revision'],
  ['purpose', 'purpose'],
  ['prepared', 'prepared'],
  ['checked', 'checked'],
  ['approved', 'approved'],
  ['check level', 'checkLevel'],
  ['date', 'date'],
  ['language', 'language'],
  ['units', 'units'],
  ['figures', 'figures'],
  ['paper', 'paper'],
  ['codes', 'codes'],
]

/** What the printed digits of every line hang on. */
const everywhere: readonly string[] = ['units', 'figures']

/** Where a change enters every line. */
export const allLines = '*'

/** What differs in the title block: keys, rows of the revision table, entries of the reference list. */
export function titleEdits(old: Notebook, now: Notebook): Edit[] {
  const plain = keys.flatMap(([key, of]) => edit(key, shown(old.title[of]), shown(now.title[of])))
  const revisions = byKey(now.title.revisions, old.title.revisions).flatMap(mark => {
    const [a, b] = [old, now].map(({ title }) => title.revisions.find(each => each.mark === mark))
    return edit(`revision ${mark}`, a && `${a.date}: ${a.note}`, b && `${b.date}: ${b.note}`)
  })
  const cited = new Set([...now.title.references.keys(), ...old.title.references.keys()])
  const references = [...cited].flatMap(key =>
    edit(`reference ${key}`, old.title.references.get(key), now.title.references.get(key)),
  )
  return [...plain, ...revisions, ...references, ...scopeEdits(old, now)]
}

/** Lines of the design basis and of the coverage ledger, by what they are about. */
function scopeEdits(old: Notebook, now: Notebook): Edit[] {
  const sides = [old, now].map(({ title }) => ({
    'design basis': new Map(title.designBasis.map(line => [line.what.text, basisText(line)])),
    coverage: new Map(title.coverage.map(({ key, by, reason }) => [key.text, reason || `by ${texts(by)}`])),
  }))
  const [before, after] = sides
  if (!before || !after) return []
  return (['design basis', 'coverage'] as const).flatMap(part =>
    [...new Set([...after[part].keys(), ...before[part].keys()])].flatMap(key =>
      edit(`${part}: ${key}`, before[part].get(key), after[part].get(key)),
    ),
  )
}

const texts = (names: readonly Written[]): string => names.map(({ text }) => text).join(', ')

const basisText = ({ value, shownBy }: Requirement): string =>
  [value?.text, shownBy.length > 0 ? `shown by ${texts(shownBy)}` : ''].filter(Boolean).join(', ')

const byKey = (...lists: readonly (readonly { readonly mark: string }[])[]): string[] => [
  ...new Set(lists.flat().map(({ mark }) => mark)),
]

function shown(value: TitleBlock[keyof TitleBlock]): string | undefined {
  if (typeof value === 'string') return value || undefined
  if (typeof value === 'number') return String(value)
  return Array.isArray(value) && value.length > 0 ? value.join(', ') : undefined
}

function edit(key: string, old: string | undefined, now: string | undefined): Edit[] {
  if (old === now) return []
  return [
    {
      change: {
        what: 'title',
        action: old === undefined ? 'added' : now === undefined ? 'removed' : 'changed',
        key,
        ...(old === undefined ? {} : { old }),
        ...(now === undefined ? {} : { now }),
        fields: [],
        bears: false,
        line: 1,
      },
      brings: [],
      uses: [],
      enters: everywhere.includes(key) ? [allLines] : [],
    },
  ]
}
