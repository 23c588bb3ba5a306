import type { Said } from '../../src/diagnostic/messages/message-page.ts'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { makeWorkings } from '../../src/evaluation/make-workings.ts'
import { plan } from '../../src/evaluation/plan.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import { readNotebookBytes } from '../../src/notebook/read-notebook.ts'

export type RunExample = (bytes: Uint8Array) => Said

/** Takes an example through every stage that gives diagnostics, as the command does. */
export const runExample: RunExample = bytes => {
  const notebook = readNotebookBytes(bytes, { path: 'notebook.md' })
  const { diagnostics } = makeWorkings(evaluate(plan(notebook, catalogue)))
  return { text: notebook.text, diagnostics }
}
