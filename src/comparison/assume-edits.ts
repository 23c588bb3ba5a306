import type { AssumeBlock, Assumption, Block } from '../notebook/types.ts'
import { fieldsOf } from './assume-fields.ts'
import { type Differences, type Edit, inBlock, reordered } from './edit.ts'
import { meaningOf } from './meaning.ts'
import { numberIn, stepBetween } from './number-step.ts'
import { noRenames } from './renames.ts'

/** What differs between two registers of one name; `shown` gives a key as the new notebook has it. */
export function assumeEdits(old: AssumeBlock, now: AssumeBlock, shown: (key: string) => string): Differences {
  const block = old.name.text
  const find = (within: AssumeBlock, name: string): Assumption | undefined =>
    within.assumptions.find(each => each.name.text === name)
  const edits: Edit[] = []
  const written: string[] = []
  for (const each of now.assumptions) {
    const was = find(old, each.name.text)
    const about = { block, key: shown(`${block}.${each.name.text}`) }
    if (!was) edits.push(added(each, about))
    else {
      const edit = changed(was, each, about)
      if (edit) edits.push(edit)
      else if (was.value.text !== each.value.text) written.push(about.key)
    }
  }
  for (const each of old.assumptions)
    if (!find(now, each.name.text)) edits.push(removed(each, { block, key: `${block}.${each.name.text}` }))
  const names = (of: AssumeBlock): string[] => of.assumptions.map(({ name }) => name.text)
  return { edits, written, order: reordered(names(old), names(now)), checks: new Map() }
}

interface About {
  readonly block: string
  /** As it is to be shown. */
  readonly key: string
}

const means = (text: string): string => meaningOf(text, { block: '', renames: noRenames })

function changed(old: Assumption, now: Assumption, { block, key }: About): Edit | undefined {
  const moved = means(old.value.text) !== means(now.value.text)
  const fields = fieldsOf(old, now)
  const name = old.name.text
  const own = `${block}.${name}`
  const nowName = key.slice(key.indexOf('.') + 1)
  const renamed = nowName !== name
  if (!moved && fields.length === 0 && !renamed) return undefined
  const step = moved ? stepBetween(old.value.text, now.value.text) : undefined
  const si = step && numberIn(now.value.text)?.si
  const put = (within: Block): Block =>
    within.kind === 'assume'
      ? { ...within, assumptions: within.assumptions.map(each => (each.name.text === name ? now : each)) }
      : within
  return {
    change: {
      what: 'assumption',
      action: renamed && !moved ? 'renamed' : 'changed',
      key,
      ...(renamed ? { old: moved ? old.value.text : own } : { old: old.value.text }),
      now: renamed && !moved ? key : now.value.text,
      ...(step ? { step } : {}),
      fields: renamed && moved ? [{ field: 'name', old: name, now: nowName }, ...fields] : fields,
      bears: moved,
      line: now.name.place.line,
    },
    ...(si === undefined ? {} : { number: { key: own, si } }),
    ...(moved ? { put: inBlock(block, put) } : {}),
    brings: [],
    uses: [],
    enters: [own],
  }
}

function added(now: Assumption, { block, key }: About): Edit {
  const put = (within: Block): Block =>
    within.kind === 'assume' ? { ...within, assumptions: [...within.assumptions, now] } : within
  const own = `${block}.${now.name.text}`
  return {
    change: {
      what: 'assumption',
      action: 'added',
      key,
      now: now.value.text,
      fields: fieldsOf(undefined, now),
      bears: true,
      line: now.name.place.line,
    },
    put: inBlock(block, put),
    brings: [own],
    uses: [],
    enters: [own],
  }
}

function removed(old: Assumption, { block, key }: About): Edit {
  const put = (within: Block): Block =>
    within.kind === 'assume'
      ? { ...within, assumptions: within.assumptions.filter(each => each.name.text !== old.name.text) }
      : within
  return {
    change: {
      what: 'assumption',
      action: 'removed',
      key,
      old: old.value.text,
      fields: fieldsOf(old, undefined),
      bears: true,
      line: old.name.place.line,
    },
    put: inBlock(block, put),
    brings: [key],
    uses: [],
    enters: [key],
  }
}
