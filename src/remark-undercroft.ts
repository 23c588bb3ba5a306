import type { Root } from 'mdast'
import type { Plugin } from 'unified'
import type { VFile } from 'vfile'
import { evaluate, type Results } from './evaluation/evaluate.ts'
import { makeWorkings } from './evaluation/make-workings.ts'
import { plan } from './evaluation/plan.ts'
import type { Workings } from './evaluation/workings.ts'
import { catalogue } from './modules/catalogue.ts'
import type { Module } from './modules/module.ts'
import { notebookOfTree } from './notebook/notebook-of-tree.ts'
import type { Notebook } from './notebook/types.ts'
import { undercroftSyntax } from './notebook/undercroft-syntax.ts'
import { putWorkingsIn } from './put-workings-in.ts'
import { reportTo } from './report-to.ts'

declare module 'vfile' {
  interface DataMap {
    /** What remarkUndercroft made of the file. */
    undercroft: { readonly notebook: Notebook; readonly results: Results; readonly workings: Workings }
  }
}

export interface UndercroftOptions {
  /** The modules that `calc` blocks may name; the catalogue when left out. */
  readonly modules?: readonly Module[]
}

/**
 * The remark plugin: a notebook's tree goes in, its tree with the working put in comes out. Problems become the file's messages;
 * `file.data.undercroft` holds the notebook, the results and the workings. remark-rehype makes HTML of it, remark-stringify the author's own text.
 */
export const remarkUndercroft: Plugin<[UndercroftOptions?], Root> = function (options = {}) {
  undercroftSyntax.call(this as never)
  return (tree: Root, file: VFile): void => {
    const notebook = notebookOfTree(tree, String(file), { path: file.path ?? 'notebook.md' })
    const planned = plan(notebook, options.modules ?? catalogue)
    const results = evaluate(planned)
    const workings = makeWorkings(results)
    putWorkingsIn(tree, notebook, workings)
    reportTo(file, workings.diagnostics)
    file.data.undercroft = { notebook, results, workings }
  }
}

export default remarkUndercroft
