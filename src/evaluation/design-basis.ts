import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import type { Requirement, Written } from '../notebook/types.ts'
import { linesOf } from './block-lines.ts'
import type { PlannedLine } from './plan-types.ts'
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
  const isMeant = (line: { readonly name: string }): boolean => check === undefined || line.name === check
  const found = block?.checks.filter(isMeant) ?? []
  if (found.length > 0 || isStopped(context, of, isMeant)) return found
  const names = blocks.flatMap(each => each.checks.flatMap(line => (line.name ? [`${each.name}.${line.name}`] : [])))
  diagnostics.push(
    block && check === undefined
      ? unknown(name, `\`${of}\` makes no check`)
      : unknown(name, `No check is called \`${name.text}\``, names),
  )
  return []
}

/** A check that a fault stopped, which has its message, or that stands in a branch not taken: it is there, and no line shows it. */
function isStopped(
  context: PrintContext,
  name: string,
  isMeant: (line: { readonly name: string }) => boolean,
): boolean {
  const { plan } = context.results
  if (plan.broken.has(name)) return true
  const index = plan.notebook.blocks.findIndex(block => block.name.text === name)
  const [source, planned] = [plan.notebook.blocks[index], plan.blocks[index]]
  if (source === undefined || planned === undefined) return source !== undefined
  const checks = linesOf<PlannedLine>(planned).filter(line => line.kind === 'check')
  const written = source.kind === 'work' ? source.statements.filter(({ kind }) => kind === 'check').length : 0
  return checks.some(isMeant) || written > checks.length
}

const unknown = (written: Written, says: string, names: Iterable<string> = []): Diagnostic =>
  unknownWritten('mention-unknown', written, { says, names })
