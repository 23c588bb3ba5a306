import type { Block, Statement, WorkBlock } from '../notebook/types.ts'
import { checkId, type Differences, type Edit, inBlock, reordered, statementTexts, usesOf } from './edit.ts'
import { statementMeaning } from './meaning.ts'
import { stepBetween } from './number-step.ts'
import { noRenames } from './renames.ts'
import type { FieldChange } from './types.ts'

type Shown = (key: string) => string

interface Paired {
  readonly a?: Statement
  readonly b?: Statement
}

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

const meaning = (statement: Statement, block: string): string =>
  statementMeaning(statement, { block, renames: noRenames })

/** A line as written, without its name and remark. */
export function rawText(statement: Statement): string {
  if (statement.kind !== 'table') return statement.formula.text
  return statement.points.map(([x, y]) => `${x.text}, ${y.text}`).join('; ')
}

function namedPairs(old: WorkBlock, now: WorkBlock): Paired[] {
  const nameOf = (each: Statement): string | undefined => (each.kind === 'check' ? undefined : each.name.text)
  const find = (of: WorkBlock, name: string | undefined): Statement | undefined =>
    name === undefined ? undefined : of.statements.find(each => nameOf(each) === name)
  const come = now.statements.filter(nameOf).map(b => {
    const a = find(old, nameOf(b))
    return a ? { a, b } : { b }
  })
  return [...come, ...old.statements.filter(a => nameOf(a) && !find(now, nameOf(a))).map(a => ({ a }))]
}

/** Checks that say the same; of the others those with the same remark, and those that are left where they are as many. */
function checkPairs(old: WorkBlock, now: WorkBlock): Paired[] {
  const block = old.name.text
  const isCheck = (each: Statement): boolean => each.kind === 'check'
  const pairs: Paired[] = []
  const gone = old.statements.filter(isCheck)
  let come = now.statements.filter(isCheck)
  const take = (like: (a: Statement, b: Statement) => boolean): void => {
    come = come.filter(b => {
      const at = gone.findIndex(a => like(a, b))
      const [a] = at < 0 ? [] : gone.splice(at, 1)
      if (a) pairs.push({ a, b })
      return !a
    })
  }
  take((a, b) => meaning(a, block) === meaning(b, block))
  take((a, b) => a.remark?.text === b.remark?.text && a.remark !== undefined)
  if (gone.length === come.length) take(() => true)
  return [...pairs, ...come.map(b => ({ b })), ...gone.map(a => ({ a }))]
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
