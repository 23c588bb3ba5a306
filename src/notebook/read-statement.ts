import { isUsableName } from './is-usable-name.ts'
import { readPoints } from './read-points.ts'
import { error, type Reading } from './reading.ts'
import type { Statement, Written } from './types.ts'
import type { WorkLine } from './work-line.ts'
import { writtenPart } from './written-part.ts'

const comparison = /[<>≤≥≠]|==|!=|\b(?:and|or|not)\b/
const definition = /^([^=<>!≤≥≠]*)=(?!=)/
const table = /^table[ \t]+(?=[^=])/

/** Returns a line of working as a step, a check or a table. Refuses a line that is none of them. */
export function readStatement({ code, remark }: WorkLine, reading: Reading): Statement | undefined {
  const rest = remark === undefined ? {} : { remark }
  const left = definition.exec(code.text)
  if (left === null)
    return comparison.test(code.text) ? { kind: 'check', formula: code, ...rest } : refuse(code, reading)
  const isTable = table.exec(code.text)?.[0].length ?? 0
  const name = writtenPart(code, isTable, left[0].length - 1)
  const formula = writtenPart(code, left[0].length, code.text.length)
  if (!isNamed(name, code, reading)) return undefined
  if (formula.text === '') {
    error(reading, 'statement-unread', {
      place: formula.place,
      says: `\`${name.text}\` is given nothing`,
      help: `Write \`${name.text} = formula\``,
    })
    return undefined
  }
  if (isTable === 0) return { kind: 'step', name, formula, ...rest }
  const points = readPoints(formula, reading)
  return points === undefined ? undefined : { kind: 'table', name, points, ...rest }
}

function isNamed(name: Written, code: Written, reading: Reading): boolean {
  if (name.text !== '') return isUsableName(name, reading)
  error(reading, 'statement-unread', {
    place: code.place,
    says: 'Nothing stands before the `=`',
    help: 'Write `name = formula`',
  })
  return false
}

function refuse({ text, place }: Written, reading: Reading): undefined {
  const help = 'Write `name = formula` for a step, or a comparison such as `e <= k` for a check'
  const short = text.length > 40 ? `${text.slice(0, 40)}…` : text
  error(reading, 'statement-unread', { place, says: `\`${short}\` is neither a step nor a check`, help })
}
