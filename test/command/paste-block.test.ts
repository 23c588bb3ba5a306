import { describe, expect, it } from 'vitest'
import { pasteBlock } from '../../src/command/module-inputs.ts'
import { plan } from '../../src/evaluation/plan.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'

describe('the block to paste', () => {
  it.each(catalogue.map(module => [module.id, module] as const))(
    '%s: is read and planned as it stands on its page',
    (_, module) => {
      const text = `---\ntitle: Trial\n---\n\n${pasteBlock(module)}\n`
      const { diagnostics } = plan(readNotebook(text, { path: 'trial.md' }), catalogue)
      expect(diagnostics.filter(({ severity }) => severity === 'error').map(({ says }) => says)).toEqual([])
    },
  )
})
