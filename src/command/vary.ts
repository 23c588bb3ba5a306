import { evaluateFile } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { sayDiagnostics } from './say-diagnostics.ts'
import type { Surroundings } from './surroundings.ts'
import { varyMargins } from './vary-margins.ts'
import type { VaryOptions } from './vary-options.ts'

/** `vary FILE`: how far can it move? A notebook with errors is not varied. */
export async function vary(around: Surroundings, file: string, options: VaryOptions): Promise<ExitStatus> {
  const { terminal } = around
  terminal.doing(`evaluating ${file}`)
  const evaluated = await evaluateFile(file)
  if (evaluated.status === exitStatus.notebook) {
    sayDiagnostics(terminal, evaluated.notebook, evaluated.diagnostics)
    terminal.say('Nothing was varied: the notebook has errors')
    return exitStatus.notebook
  }
  varyMargins(around, evaluated, options)
  return evaluated.status
}
