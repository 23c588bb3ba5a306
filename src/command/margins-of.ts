import type { Margins } from '../sheets/package-model.ts'
import { findMargins } from '../study/margins.ts'
import { showMargins } from '../study/shown-margins.ts'
import type { Evaluated } from './evaluated.ts'
import { exitStatus } from './exit-status.ts'

/** A package is composed more than once of one evaluation; its margins are found once. */
const found = new WeakMap<Evaluated['results'], Margins>()

/** The margins for the register, by anchor. A notebook with errors has none: what it cannot work out might turn first. */
export function marginsOf({ results, status }: Evaluated): { readonly margins?: Margins } {
  if (status === exitStatus.notebook) return {}
  const margins = found.get(results) ?? searched(results)
  found.set(results, margins)
  return { margins }
}

function searched(results: Evaluated['results']): Margins {
  const { margins } = showMargins(findMargins(results.plan), results)
  return new Map(margins.map(margin => [margin.id, margin]))
}
