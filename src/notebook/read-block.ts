import { readAssumptions } from './read-assumptions.ts'
import { kindOf, readBlockHead } from './read-block-head.ts'
import type { Fence } from './read-fence.ts'
import { readInputs } from './read-inputs.ts'
import { readWorking } from './read-working.ts'
import { error, type Reading } from './reading.ts'
import type { Block } from './types.ts'

/** Returns a fence of ours as a block, or nothing where it has no usable name; what is wrong in it is reported all the same. */
export function readBlock(fence: Fence, reading: Reading): Block | undefined {
  const kind = kindOf(fence)
  if (kind === undefined) return undefined
  const head = readBlockHead(kind, fence, reading)
  if (!fence.closed) reportUnclosed(fence, reading)
  const body = fence.closed ? readBody(kind, fence, reading) : emptyBody
  if (head === undefined) return undefined
  const unread = body.whole ? {} : ({ unread: true } as const)
  const { name, module } = head
  const base = { name, place: fence.head.place, end: fence.end, ...unread }
  if (kind === 'assume') return { kind, ...base, assumptions: body.assumptions }
  if (kind === 'work') return { kind, ...base, statements: body.statements }
  return module === undefined ? undefined : { kind, ...base, module, inputs: body.inputs }
}

const emptyBody = { assumptions: [], inputs: [], statements: [], whole: false } as const

function readBody(kind: Block['kind'], { inner }: Fence, reading: Reading) {
  switch (kind) {
    case 'assume':
      return { ...emptyBody, ...readAssumptions(inner, reading) }
    case 'calc':
      return { ...emptyBody, ...readInputs(inner, reading) }
    case 'work':
      return { ...emptyBody, ...readWorking(inner, reading) }
  }
}

/** An unclosed fence runs to the end of the file or of what holds it: what it swallowed is not read, and not complained of. */
function reportUnclosed({ head }: Fence, reading: Reading): void {
  const fence = /^(?:`+|~+)/.exec(head.text)?.[0] ?? '```'
  const says = 'The block is opened here and never closed'
  error(reading, 'fence-unclosed', { place: head.place, says, help: `Close it with a line ${fence}` })
}
