import { resultsData } from '../evaluation/results-data.ts'
import { dataDifferences } from './data-differences.ts'
import { type Evaluated, evaluateBytes } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { type Made, makeAgain } from './make-again.ts'
import { pageDifferences } from './page-differences.ts'
import type { Proof } from './proof.ts'
import { sayProof } from './proof-text.ts'
import type { ProveOptions } from './prove-options.ts'
import { readInput } from './read-input.ts'
import { aPackage, type ReadPackage, readPackage } from './read-package.ts'
import { sha256 } from './sha256.ts'
import type { Surroundings } from './surroundings.ts'

/** `prove PACKAGE`: evaluates the notebook inside a package again, makes the package again, and says whether it is what its notebook gives. */
export async function prove(around: Surroundings, path: string, options: ProveOptions): Promise<ExitStatus> {
  const { terminal } = around
  const shown = path === '-' ? 'standard input' : path
  const found = await readPackage(shown, await readInput(path, aPackage))
  terminal.doing(`evaluating ${found.name}`)
  const evaluated = await evaluateBytes(found.notebook, found.name)
  const made = await makeAgain(around, { found, evaluated, options })
  const proof = compared(around, { path: shown, found, evaluated, made })
  sayProof(terminal, proof, options.format)
  return proof.verdict === 'differs' ? exitStatus.notebook : exitStatus.well
}

function compared(
  around: Surroundings,
  { path, found, evaluated, made }: { path: string; found: ReadPackage; evaluated: Evaluated; made: Made },
): Proof {
  const about = { tool: found.facts.tool, path: found.name, sha256: sha256(found.notebook) }
  const data = JSON.parse(JSON.stringify(resultsData(evaluated.results, evaluated.workings, about)))
  const results = dataDifferences(parsed(found.results), data).map(each => ({ ...each, at: each.at || 'results.json' }))
  const text = pageDifferences(found.pages, made.pages)
  const identical = Buffer.compare(found.bytes, made.bytes) === 0
  const unseen = !identical && made.alike && results.length + text.length === 0
  const differs = unseen || results.length + text.length > 0
  return {
    package: path,
    notebook: { name: found.name, sha256: about.sha256 },
    issuedBy: found.facts.tool,
    provedBy: `undercroft ${around.version}`,
    verdict: identical ? 'identical' : differs ? 'differs' : 'same',
    results,
    text,
    unseen,
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return text
  }
}
