import { namesOf } from '../formula/names-of.ts'
import type { Formula } from '../formula/types.ts'

/** A name that nothing has, where the line it stands in was perhaps meant to give it. */
export interface MeantToDefine {
  readonly name: string
  readonly help: string
}

/**
 * What a line of working would define if its `==` were a `=`, as in `Q == 3 kN`: nothing where it is more than one such comparison,
 * or its left side is no plain name or stands on the right too.
 */
export function meantToDefine({ tree, text }: Formula): MeantToDefine | undefined {
  if (tree.kind !== 'comparison' || tree.op !== '==' || tree.left.kind !== 'name') return undefined
  const { name } = tree.left
  if (name.includes('.') || namesOf(tree.right).includes(name)) return undefined
  const given = text.slice(tree.at.end).trim()
  return { name, help: `Write \`${name} = ${given.length > 40 ? '…' : given}\` to give \`${name}\` this value` }
}
