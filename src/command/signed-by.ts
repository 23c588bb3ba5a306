import { isDay, type Signed } from '../checking/record.ts'
import type { TitleBlock } from '../notebook/types.ts'
import { exitStatus } from './exit-status.ts'
import { plainWords } from './plain-words.ts'
import { Stopped } from './stopped.ts'
import type { TickOptions } from './tick-options.ts'

const longestName = 80

/** Who signs, and the day. Refuses the one who prepared the package, unless it says that it is checked by its own author. */
export function signedBy({ prepared, checkLevel }: TitleBlock, options: TickOptions): Signed {
  const by = nameOf(options.by ?? '')
  const on = options.on ?? today(new Date())
  if (!isDay(on)) throw called(`\`--on\` takes a date as 2026-03-04, not \`${on}\``)
  const ticks = options.comment === undefined && options.settle === undefined && !options.remove
  if (ticks && checkLevel !== 'self' && person(prepared) !== '' && person(prepared) === person(by))
    throw called(
      `${by} prepared this package, and another person has to check it`,
      'Where that is meant, write `check level: self` in the title block',
    )
  return { by, on }
}

function nameOf(text: string): string {
  const name = text.trim()
  if (name === '') throw called('A tick is signed: give `--by NAME`')
  if (name !== plainWords(name)) throw called('`--by` is a name in one line, of characters that can be printed')
  if ([...name].length > longestName)
    throw called(`\`--by\` is a name of at most ${longestName} characters, and this one has ${[...name].length}`)
  return name
}

/** The day where the checker is. */
const today = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(part => String(part).padStart(2, '0')).join('-')

const person = (text: string): string => (text.split(',')[0] ?? '').trim().toLowerCase()

const called = (says: string, help?: string): Stopped => new Stopped(exitStatus.called, says, help)
