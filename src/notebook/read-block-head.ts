import { isBlockName, likelyBlockName } from './name-forms.ts'
import type { Fence } from './read-fence.ts'
import { error, type Reading } from './reading.ts'
import type { Block, Written } from './types.ts'

const blockKinds = ['assume', 'calc', 'work'] as const satisfies readonly Block['kind'][]

/** The first line of a block: `calc two-way-slab roof`. */
export interface BlockHead {
  readonly kind: Block['kind']
  readonly name: Written
  /** Only of a `calc` block. */
  readonly module?: Written
}

const forms = {
  assume: { words: 2, shape: '`assume NAME`, as in `assume site`' },
  calc: { words: 3, shape: '`calc MODULE NAME`, as in `calc two-way-slab roof`' },
  work: { words: 2, shape: '`work NAME`, as in `work thrust`' },
} as const

/** Returns the kind of block a fence is, or nothing where it is not one of ours. */
export const kindOf = (fence: Fence): Block['kind'] | undefined =>
  blockKinds.find(kind => kind === fence.words[0]?.text)

/** Returns the head of a block of ours. Refuses words too few or too many, and a name that cannot be used. */
export function readBlockHead(kind: Block['kind'], fence: Fence, reading: Reading): BlockHead | undefined {
  const { words, shape } = forms[kind]
  const extra = fence.words[words]
  const name = fence.words[words - 1]
  if (extra !== undefined) {
    error(reading, 'block-name', {
      place: extra.place,
      says: `\`${extra.text}\` is one word too many`,
      help: `Write ${shape}`,
    })
    return undefined
  }
  if (name === undefined) {
    const says = words - fence.words.length > 1 ? 'The block has no module and no name' : 'The block has no name'
    error(reading, 'block-name', { place: fence.head.place, says, help: `Write ${shape}` })
    return undefined
  }
  if (!isBlockName(name.text)) {
    refuseName(name, reading)
    return undefined
  }
  const module = fence.words[1]
  return kind === 'calc' && module !== undefined ? { kind, name, module } : { kind, name }
}

function refuseName({ text, place }: Written, reading: Reading): void {
  const likely = likelyBlockName(text)
  const says = `\`${text}\` cannot be the name of a block: small letters, digits and \`_\`, a letter first`
  error(reading, 'block-name', {
    place,
    says,
    help: likely === undefined ? 'Write for instance `roof_load`' : `Write \`${likely}\``,
  })
}
