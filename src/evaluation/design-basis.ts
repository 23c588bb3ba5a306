import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import type { Requirement, Written } from '../notebook/types.ts'
import { isKnown, type PrintContext, printedOf } from './print-context.ts'
import { unknownWritten } from './unknown-written.ts'
import type { BasisRow, BlockWorking, CheckLine } from './workings.ts'

/** The design basis with its values and checks, and which of its names mean nothing. */
export function designBasis(context: PrintContext, blocks: readonly BlockWorking[]) {
  const diagnostics: Diagnostic[] = []
  const rows = context.results.plan.notebook.title.designBasis.map((asked): BasisRow => {
    const value = asked.value && shownFor(context, asked.value, diagnostics)
    return {
      what: asked.what.text,
      ...(value ? { value } : {}),
      checks: checksOf(asked, { context, blocks, diagnostics }),
    }
  })
  return { rows, diagnostics }
}

function shownFor(context: PrintContext, name: Written, diagnostics: Diagnostic[]): BasisRow['value'] {
  const { names, broken } = context.results.plan
  const named = names.get(name.text)
  if (named?.kind === 'word') return { shown: named.text, to: context.numbering.assumptions.get(named.key)?.id ?? '' }
  if (named?.kind === 'number') {
    const { shown, to } = printedOf(context, named)
    return isKnown(context, named) ? { shown, ...(to ? { to } : {}) } : undefined
  }
  const [block = ''] = name.text.split('.')
  if (!named && (broken.has(name.text) || broken.has(block))) return undefined
  diagnostics.push(
    named
      ? unknown(name, `\`${name.text}\` is not one value`)
      : unknown(name, `No value is called \`${name.text}\``, names.keys()),
  )
  return undefined
}

interface Known {
  readonly context: PrintContext
  readonly blocks: readonly BlockWorking[]
  readonly diagnostics: Diagnostic[]
}

const checksOf = ({ shownBy }: Requirement, known: Known): CheckLine[] => [
  ...new Set(shownBy.flatMap(name => checksNamed(name, known))),
]

/** Checks by `block.check`, those of every row where it stands in a list, or all of a block by its name. */
function checksNamed(name: Written, { context, blocks, diagnostics }: Known): readonly CheckLine[] {
  const [of = '', check] = name.text.split('.')
  const block = blocks.find(each => each.name === of)
  const found =
    block?.checks.filter(
      line => check === undefined || line.name.replace(/_\d+$/, '') === check || line.name === check,
    ) ?? []
  if (found.length > 0) return found
  if (context.results.plan.broken.has(of) || (block && !block.complete)) return []
  const names = blocks.flatMap(each => each.checks.flatMap(line => (line.name ? [`${each.name}.${line.name}`] : [])))
  diagnostics.push(
    block && check === undefined
      ? unknown(name, `\`${of}\` makes no check`)
      : unknown(name, `No check is called \`${name.text}\``, names),
  )
  return []
}

const unknown = (written: Written, says: string, names: Iterable<string> = []): Diagnostic =>
  unknownWritten('mention-unknown', written, { says, names })
