import { printable } from '../diagnostic/printable.ts'
import { plural } from './count-of.ts'
import type { Proof } from './proof.ts'
import type { Terminal } from './terminal.ts'

const most = 20

/** Says what was found out, the verdict last. */
export function sayProof(terminal: Terminal, proof: Proof, format: 'text' | 'json'): void {
  terminal.answer(format === 'json' ? JSON.stringify(proof, null, 2) : proofText(proof))
}

function proofText({ results, text, unseen, ...proof }: Proof): string {
  const lines = [
    `notebook  ${printable(proof.notebook.name)}, SHA-256 ${proof.notebook.sha256}`,
    `issued by ${printable(proof.issuedBy)}, proved by ${proof.provedBy}`,
    ...listed(
      'in its results',
      results.map(({ at, stands, gives }) => ({ at, stands, gives })),
    ),
    ...listed(
      'in its text',
      text.map(({ page, stands, gives }) => ({ at: `page ${page}`, stands, gives })),
    ),
    ...(unseen
      ? [
          'The text is the same and the bytes are not, with the same tool and browser: something that is no text was changed',
        ]
      : []),
    `${printable(proof.package)}: ${verdicts[proof.verdict]}`,
  ]
  return lines.join('\n')
}

const verdicts = {
  identical: 'byte for byte what its notebook gives',
  same: 'same results and same text as its notebook gives; the bytes differ, since tool or browser are not the ones it was issued with',
  differs: 'NOT what its notebook gives',
} as const

function listed(where: string, found: readonly { at: string; stands: string; gives: string }[]): string[] {
  if (found.length === 0) return []
  const shown = found
    .slice(0, most)
    .flatMap(({ at, stands, gives }) => [`  ${printable(at)}`, `    stands ${cut(stands)}`, `    gives  ${cut(gives)}`])
  const more = found.length > most ? [`  and ${found.length - most} more`] : []
  return [`${plural(found.length, 'difference')} ${where}`, ...shown, ...more]
}

function cut(text: string): string {
  if (text === '') return 'nothing'
  return printable(text.length > 90 ? `${text.slice(0, 87)}…` : text)
}
