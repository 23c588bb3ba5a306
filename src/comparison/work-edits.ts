import type { Block, Statement, WorkBlock } from '../notebook/types.ts'
import type { FieldChange } from './change-types.ts'
import { checkId, type Differences, type Edit, inBlock, reordered, statementTexts, usesOf } from './edit.ts'
import { stepBetween } from './number-step.ts'
import { checkPairs, meaning, namedPairs, type Paired, rawText } from './pair-statements.ts'

type Shown = (key: string) => string

/** What differs between two work blocks of one name. Steps and tables are known by name, checks by what they say. */
export function workEdits(old: WorkBlock, now: WorkBlock, shown: Shown): Differences {
  const block = old.name.text
  const edits: Edit[] = []
  const written: string[] = []
  const checks = new Map<string, string>()
  for (const pair of [...namedPairs(old, now), ...checkPairs(old, now)]) {
    const { a, b } = pair
    const key = shown(keyOf(pair, block))
    const edit = statementEdit(pair, { block, key, nowhere: now.place.line })
    if (edit) edits.push(edit)
    else if (a && b && rawText(a) !== rawText(b)) written.push(key)
    if (a?.kind === 'check' && b?.kind === 'check' && meaning(a, block) !== meaning(b, block))
      checks.set(checkId(block, meaning(b, block)), checkId(block, meaning(a, block)))
  }
  const names = (of: WorkBlock): string[] => of.statements.map(each => (each.kind === 'check' ? '' : each.name.text))
  const order = reordered(names(old).filter(Boolean), names(now).filter(Boolean))
  return { edits, written, order, checks }
}

function keyOf({ a, b }: Paired, block: string): string {
  const statement = b ?? a
  if (!statement) return block
  return `${block}.${statement.kind === 'check' ? statement.formula.text : statement.name.text}`
}

function statementEdit(
  { a, b }: Paired,
  { block, key, nowhere }: { block: string; key: string; nowhere: number },
): Edit | undefined {
  const moved = !a || !b || meaning(a, block) !== meaning(b, block)
  const remark: FieldChange = { field: 'remark', old: a?.remark?.text ?? '', now: b?.remark?.text ?? '' }
  const fields = a && b && remark.old !== remark.now ? [remark] : []
  const statement = b ?? a
  if (!statement || (!moved && fields.length === 0 && !isRenamed(a, key))) return undefined
  const own =
    statement.kind === 'check'
      ? [a, b].flatMap(each => (each ? checkId(block, meaning(each, block)) : []))
      : [`${block}.${statement.name.text}`]
  const [from, to] = [a && rawText(a), b && rawText(b)]
  const step = moved && from !== undefined && to !== undefined ? stepBetween(from, to) : undefined
  return {
    change: {
      what: statement.kind === 'step' ? 'formula' : statement.kind,
      action: !a ? 'added' : !b ? 'removed' : !moved && isRenamed(a, key) ? 'renamed' : 'changed',
      key: statement.kind === 'check' ? key.slice(0, key.indexOf('.')) : key,
      ...(from === undefined ? {} : { old: !moved && isRenamed(a, key) ? `${block}.${nameOf(a)}` : from }),
      ...(to === undefined ? {} : { now: !moved && isRenamed(a, key) ? key : to }),
      ...(step ? { step } : {}),
      fields,
      bears: moved,
      line: placeOf(statement) ?? nowhere,
    },
    ...(moved ? { put: inBlock(block, within => putStatement(within, { a, b })) } : {}),
    brings: a && b ? [] : own,
    uses: usesOf(
      [a, b].flatMap(each => (each ? statementTexts(each) : [])),
      block,
    ),
    enters: own,
  }
}

const nameOf = (statement: Statement | undefined): string =>
  !statement || statement.kind === 'check' ? '' : statement.name.text

const isRenamed = (old: Statement | undefined, key: string): boolean =>
  old !== undefined && old.kind !== 'check' && key.slice(key.indexOf('.') + 1) !== old.name.text

const placeOf = (statement: Statement): number | undefined =>
  (statement.kind === 'check' ? statement.formula : statement.name).place.line

function putStatement(block: Block, { a, b }: { a: Statement | undefined; b: Statement | undefined }): Block {
  if (block.kind !== 'work') return block
  if (!a) return b ? { ...block, statements: [...block.statements, b] } : block
  return { ...block, statements: block.statements.flatMap(each => (each === a ? (b ?? []) : each)) }
}
