import { plan } from '../../src/evaluation/plan.ts'
import type { Plan } from '../../src/evaluation/plan-types.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'

export const head = '---\ntitle: Skerry Point trial sheet\n---\n\n'

/** A notebook of assumptions `name: yaml`, one work block \`w\`, and what stands after them. */
export const bodyOf = (assumptions: Readonly<Record<string, string>>, work: readonly string[], more = ''): string =>
  `\`\`\`assume a\n${Object.entries(assumptions)
    .map(([name, yaml]) => `${name}: ${yaml}`)
    .join('\n')}\n\`\`\`\n\n\`\`\`work w\n${work.join('\n')}\n\`\`\`\n\n${more}`

/** Plans a body; refuses (throws) one with an error in it. */
export function planOf(body: string): Plan {
  const planned = plan(readNotebook(head + body, { path: 'trial.md' }), catalogue)
  const fault = planned.diagnostics.find(({ severity }) => severity === 'error')
  if (fault) throw new Error(fault.says)
  return planned
}
