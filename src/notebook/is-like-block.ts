import { slips } from '../diagnostic/slips.ts'
import { isBlockName } from './name-forms.ts'
import type { Fence } from './read-fence.ts'
import type { Block } from './types.ts'

/** Longer words that an author may write for a kind of block. */
const longer = { assume: /^assum/, calc: /^calcul/, work: /^workings?$/ } as const
/** How many letters may differ: `work` is near to too many other words. */
const mostSlips = { assume: 2, calc: 2, work: 1 } as const

/**
 * Returns the kind of block that a fence was meant to be, where its first word is nearly one and all the rest of it looks
 * like that block; otherwise nothing, and the fence is somebody else's.
 */
export function isLikeBlock(fence: Fence): Block['kind'] | undefined {
  const word = fence.words[0]?.text.toLowerCase() ?? ''
  if (word.length > 20) return undefined
  return (['assume', 'calc', 'work'] as const).find(
    kind => (slips(word, kind) <= mostSlips[kind] || longer[kind].test(word)) && restFits(kind, fence),
  )
}

function restFits(kind: Block['kind'], { words, inner }: Fence): boolean {
  const rest = words.slice(1).map(({ text }) => text)
  if (!isBlockName(rest.at(-1) ?? '')) return false
  if (kind === 'calc') return rest.length === 2 && /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/.test(rest[0] ?? '')
  const line = kind === 'work' ? /^[ \t]*\p{L}\w*[ \t]*=(?!=)|[<>]=?/mu : /^[ \t]*\p{L}\w*[ \t]*:(?:\s|$)/mu
  return rest.length === 1 && line.test(inner.text)
}
