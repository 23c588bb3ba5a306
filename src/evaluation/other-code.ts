import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import type { Module } from '../modules/module.ts'
import type { CalcBlock } from '../notebook/types.ts'

const plain = (code: string): string => code.toLowerCase().replaceAll(/\s+/g, ' ').trim()

/** A warning where a module works by a design code that the title block does not list; nothing where it lists none at all. */
export function otherCode(block: CalcBlock, module: Module, codes: readonly string[]): Diagnostic | undefined {
  const { code } = module
  if (!code || codes.length === 0 || codes.some(listed => plain(listed).startsWith(plain(code)))) return undefined
  return {
    rule: 'module-other-code',
    severity: 'warning',
    place: block.module.place,
    says: `\`${module.id}\` works by ${code}, which the codes of the title block do not list (${codes.join(', ')})`,
    help: `Choose the module of the package's own code, or add \`${code}\` to \`codes\``,
  }
}
