import type { Place } from '../diagnostic/diagnostic.ts'
import { nearestName } from '../diagnostic/nearest-name.ts'
import { entryPlace } from './entry-parts.ts'
import { error, type Reading } from './reading.ts'
import { titleKeys } from './title-keys.ts'
import type { Keyed, TitleBlock } from './types.ts'

interface Where {
  readonly entries: readonly Keyed[]
  readonly place: Place
  readonly reading: Reading
}

/** Reports what the values of the title block say against each other: no title, a checker who is the preparer, a lost revision. */
export function checkTitle(title: Partial<TitleBlock>, where: Where): void {
  checkHasTitle(title, where)
  checkChecker(title, where)
  checkRevision(title, where)
}

const placed = (key: string, { entries, place }: Where): Place => {
  const found = entries.find(entry => entry.key.text === key)
  return found === undefined ? place : entryPlace(found.value)
}

function checkHasTitle({ title = '' }: Partial<TitleBlock>, where: Where): void {
  const entry = where.entries.find(({ key }) => key.text === 'title')
  if (title !== '' || (entry !== undefined && entry.value.kind !== 'scalar')) return
  // A misspelled `title` has been reported as an unknown key.
  if (where.entries.some(({ key }) => key.text !== 'title' && nearestName(key.text, titleKeys.keys()) === 'title'))
    return
  const help = 'Write `title: Shelter roof and walls`'
  error(where.reading, 'front-matter-value', {
    place: placed('title', where),
    says: 'The notebook has no `title`',
    help,
  })
}

/** EN 1990 Table B4 tells levels of checking apart by who checks; the name is what stands before the first comma. */
function checkChecker({ prepared = '', checked = '', checkLevel }: Partial<TitleBlock>, where: Where): void {
  const name = person(checked)
  if (name === '' || name !== person(prepared) || checkLevel === 'self') return
  const says = `The checker is the preparer${checkLevel === undefined ? '' : `, but the check level is \`${checkLevel}\``}`
  const notes = [{ says: 'The preparer is named here', place: placed('prepared', where) }]
  const help = 'Name another person, leave `checked` blank, or write `check level: self`'
  error(where.reading, 'checker-is-preparer', { place: placed('checked', where), says, help, notes })
}

const person = (signed: string): string => (signed.split(',', 1)[0] ?? '').trim().replaceAll(/\s+/g, ' ').toLowerCase()

function checkRevision({ revision = '', revisions = [] }: Partial<TitleBlock>, where: Where): void {
  if (revisions.length === 0 || revisions.some(({ mark }) => mark === revision)) return
  const marks = revisions.map(({ mark }) => `\`${mark}\``).join(', ')
  const says =
    revision === ''
      ? `\`revisions\` lists ${marks}, but there is no \`revision\``
      : `\`revisions\` has no row for the current revision \`${revision}\``
  const key = revision === '' ? 'revisions' : 'revision'
  const help =
    revision === ''
      ? `Write \`revision: ${revisions.at(-1)?.mark}\``
      : `Add a row for it, with its day and its reason; the table lists ${marks}`
  error(where.reading, 'front-matter-value', { place: placed(key, where), says, help })
}
