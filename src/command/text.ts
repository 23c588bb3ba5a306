import { printable } from '../diagnostic/printable.ts'
import { answerWords, blockResults } from '../evaluation/block-results.ts'
import { fillText } from '../notebook/fill-text.ts'
import { type Evaluated, evaluateFile } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { refuseOwnFiles } from './refuse-own-files.ts'
import { sayDiagnostics } from './say-diagnostics.ts'
import type { Surroundings } from './surroundings.ts'
import { writeTogether } from './write-together.ts'

const help = 'Name another file with `--out FILE`'

/** `text FILE`: the notebook with its answers filled in, as Markdown. The notebook itself is never written over. */
export async function text(
  around: Surroundings,
  file: string,
  { out }: { readonly out?: string },
): Promise<ExitStatus> {
  const { terminal, untilStopped } = around
  if (out !== undefined) await refuseOwnFiles(out, file, help)
  terminal.doing(`evaluating ${file}`)
  const evaluated = await evaluateFile(file)
  sayDiagnostics(terminal, evaluated.notebook, evaluated.diagnostics)
  if (wasNotRead(evaluated)) return exitStatus.notebook
  const filled = filledText(evaluated)
  if (out === undefined) terminal.exactly(filled)
  else {
    await untilStopped(signal => writeTogether([{ path: out, bytes: filled }], { help, signal }))
    terminal.answer(`Wrote ${printable(out)}`)
  }
  return evaluated.status
}

function filledText({ notebook, results, workings }: Evaluated): string {
  const blocks = new Map(workings.blocks.map(block => [block.index, block]))
  return fillText(notebook, {
    block: index => {
      const block = blocks.get(index)
      const rows = block ? blockResults(results, block) : []
      return rows.length > 0 ? [['Name', 'Result', 'Meaning'], ...rows] : undefined
    },
    mention: index => answerWords(workings.answers[index]),
  })
}

/** Nothing at all could be read of it: it is no text, or past a limit. */
const wasNotRead = ({ notebook, status }: Evaluated): boolean =>
  status === exitStatus.notebook && notebook.tree.children.length === 0
