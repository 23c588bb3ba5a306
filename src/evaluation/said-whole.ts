import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { nearestName } from '../diagnostic/nearest-name.ts'
import type { Draft } from './draft.ts'

/** The faults of a plan, said in full now that every name is known: how many values each stops, and what was probably meant. */
export function saidWhole(draft: Draft): Diagnostic[] {
  return draft.diagnostics.map(fault => {
    const stops = draft.stopped.get(fault)
    const unknown = draft.unknown.get(fault)
    const help = unknown && [meantBy(draft, unknown) ?? [], unknown.help ?? []].flat().join(' ')
    return { ...fault, ...(help ? { help } : {}), ...(stops ? { stops } : {}) }
  })
}

/** The nearest name, as it would be written in that block; the nearest block where no name is near. */
function meantBy({ names, notebook }: Draft, { name, block }: { name: string; block: string }): string | undefined {
  const own = `${block}.`
  const candidates = [...names.keys()].map(key => (key.startsWith(own) ? key.slice(own.length) : key))
  const nearest = nearestName(name, candidates)
  if (nearest) return `Did you mean \`${nearest}\`?`
  const dot = name.indexOf('.')
  const blocks = notebook.blocks.map(each => each.name.text)
  const owner = dot < 0 ? undefined : name.slice(0, dot)
  if (owner === undefined || blocks.includes(owner)) return undefined
  const likely = nearestName(owner, blocks)
  return likely ? `No block is called \`${owner}\`; did you mean \`${likely}\`?` : `No block is called \`${owner}\``
}
