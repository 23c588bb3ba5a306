import type { Block, Notebook, Written } from '../notebook/types.ts'
import { assumeEdits } from './assume-edits.ts'
import { blockInOldNames } from './block-in-old-names.ts'
import { calcEdits } from './calc-edits.ts'
import { type Differences, type Edit, reordered, restOf, statementTexts, together, usesOf } from './edit.ts'
import { entryTexts } from './meaning.ts'
import type { Pair } from './pair-blocks.ts'
import { oldKey, type Renames } from './renames.ts'
import { workEdits } from './work-edits.ts'

/** Everything that differs in the blocks: within those that both notebooks have, and blocks that came, went or got another name. */
export function blockEdits(
  { old, now }: { readonly old: Notebook; readonly now: Notebook },
  { pairs, renames }: { readonly pairs: readonly Pair[]; readonly renames: Renames },
): Differences {
  const shown = newKeys(renames)
  const within = pairs.map(pair => pairEdits(pair, { renames, shown }))
  const names = (notebook: Notebook, of: (name: string) => string): string[] =>
    notebook.blocks.map(({ name }) => of(name.text))
  const order = reordered(
    names(old, name => name),
    names(now, name => oldKey(renames, name)),
  )
  return { ...together(within), order: order || within.some(each => each.order) }
}

/** Old keys as the new notebook has them. */
function newKeys(renames: Renames): (key: string) => string {
  const names = new Map([...renames.names].map(([now, old]) => [old, now]))
  const blocks = new Map([...renames.blocks].map(([now, old]) => [old, now]))
  return key => {
    const own = names.get(key)
    if (own !== undefined) return own
    const [block = '', ...rest] = key.split('.')
    return [blocks.get(block) ?? block, ...rest].join('.')
  }
}

interface About {
  readonly renames: Renames
  readonly shown: (key: string) => string
}

function pairEdits({ old, now: real }: Pair, { renames, shown }: About): Differences {
  const none = { written: [], order: false, checks: new Map<string, string>() }
  const now = real && blockInOldNames(real, renames)
  if (!old || !now) return { edits: [wholeEdit(old, now)], ...none }
  const renamed = real.name.text === old.name.text ? [] : [renameEdit(old, real)]
  const inside = insideEdits(old, now, shown)
  return { ...inside, edits: [...renamed, ...inside.edits] }
}

function insideEdits(old: Block, now: Block, shown: (key: string) => string): Differences {
  if (old.kind === 'assume' && now.kind === 'assume') return assumeEdits(old, now, shown)
  if (old.kind === 'calc' && now.kind === 'calc') return calcEdits(old, now, shown)
  if (old.kind === 'work' && now.kind === 'work') return workEdits(old, now, shown)
  throw new Error('blocks of two kinds are no pair')
}

const renameEdit = (old: Block, now: Block): Edit => ({
  change: {
    what: 'block',
    action: 'renamed',
    key: now.name.text,
    old: old.name.text,
    now: now.name.text,
    fields: [],
    bears: false,
    line: now.place.line,
  },
  brings: [],
  uses: [],
  enters: [],
})

/** A block that came or went. */
function wholeEdit(old: Block | undefined, now: Block | undefined): Edit {
  const block = now ?? old
  if (!block) throw new Error('a pair has a block')
  const name = block.name.text
  const texts = textsOf(block)
  return {
    change: {
      what: 'block',
      action: now ? 'added' : 'removed',
      key: name,
      [now ? 'now' : 'old']: block.kind === 'calc' ? `calc ${block.module.text}` : block.kind,
      fields: [],
      bears: true,
      line: block.place.line,
    },
    put: blocks =>
      now ? [...blocks, now] : blocks.filter(each => each.name.text !== name || each.kind !== block.kind),
    brings: [name],
    uses: usesOf(texts, name),
    enters: [name, restOf(name)],
  }
}

function textsOf(block: Block): readonly Written[] {
  if (block.kind === 'assume') return []
  if (block.kind === 'calc') return block.inputs.flatMap(({ value }) => entryTexts(value))
  return block.statements.flatMap(statementTexts)
}
