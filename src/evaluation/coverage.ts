import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { type LedgerKey, ledger, wings } from '../modules/ledger.ts'
import type { Covered } from '../modules/module.ts'
import type { CoverageEntry, Written } from '../notebook/types.ts'
import type { Plan, PlannedCalc } from './plan-types.ts'
import { unknownWritten } from './unknown-written.ts'
import type { BlockWorking, CoverageLine } from './workings.ts'

/** Every line of the ledger: the blocks that answer it, the author's reason why it does not apply, or neither. */
export function coverageOf(plan: Plan, blocks: readonly BlockWorking[]) {
  const { coverage } = plan.notebook.title
  const diagnostics = coverage.flatMap(entry => faultsOf(entry, plan, blocks))
  const lines = (Object.keys(ledger) as LedgerKey[]).map((key): CoverageLine => {
    const { wing, says } = ledger[key]
    const own = coverage.find(entry => entry.key.text === key)
    const named = blocks.filter(({ name }) => own?.by.some(({ text }) => text === name))
    // A block may answer as a module and be named too: its checks count once.
    const by = [...new Set([...answering(plan, blocks, key), ...named])]
    const reason = own?.reason || coverage.find(entry => entry.key.text === wing)?.reason
    return {
      key,
      wing: wings[wing],
      says,
      by: by.map(({ id, number, name, checks }) => ({ id, number, name, checks })),
      ...(by.length === 0 && reason ? { reason } : {}),
    }
  })
  return { lines, diagnostics }
}

function answering(plan: Plan, blocks: readonly BlockWorking[], key: LedgerKey): BlockWorking[] {
  return blocks.filter(({ index }) => {
    const planned = plan.blocks[index]
    return planned?.kind === 'calc' && planned.module.covers?.some(covered => answers(planned, covered, key))
  })
}

function answers({ words }: PlannedCalc, covered: Covered, key: LedgerKey): boolean {
  if (typeof covered === 'string') return covered === key
  return covered.line === key && covered.is.includes(words.get(covered.choice) ?? '')
}

function faultsOf({ key, by, reason }: CoverageEntry, plan: Plan, blocks: readonly BlockWorking[]): Diagnostic[] {
  const keys = [...Object.keys(ledger), ...Object.keys(wings)]
  if (!keys.includes(key.text)) return [fault(key, `The coverage ledger has no line \`${key.text}\``, keys)]
  const names = plan.notebook.blocks.map(({ name }) => name.text)
  const missing = by
    .filter(({ text }) => !names.includes(text))
    .map(name => fault(name, `No block is called \`${name.text}\``, names))
  const answered = key.text in ledger && reason !== '' ? answering(plan, blocks, key.text as LedgerKey)[0] : undefined
  if (answered === undefined) return missing
  return [...missing, fault(key, `\`${key.text}\` is left out, and \`${answered.name}\` answers it`)]
}

const fault = (written: Written, says: string, names: Iterable<string> = []): Diagnostic =>
  unknownWritten('front-matter-value', written, { says, names })
