import { Command, CommanderError } from 'commander'
import { printableLines } from '../diagnostic/printable.ts'
import type { Done } from './done.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { addNotebookCommands } from './notebook-commands.ts'
import { addReviewCommands } from './review-commands.ts'
import type { Surroundings } from './surroundings.ts'

const notes = `
Exit status: 0 all is well, 1 the notebook has errors or the package differs, 2 called wrongly, 3 a check is not satisfied,
4 the package could not be written, 70 a fault of the program itself.
Results are for review by a licensed engineer under the local code.`

/** Runs one command line and returns its exit status. */
export async function runProgram(args: readonly string[], around: Surroundings): Promise<ExitStatus> {
  let status: ExitStatus = exitStatus.well
  const program = programOf(around, done => {
    status = done
  })
  try {
    await program.parseAsync(args, { from: 'user' })
  } catch (thrown) {
    if (!(thrown instanceof CommanderError)) throw thrown
    return thrown.exitCode === 0 ? exitStatus.well : exitStatus.called
  }
  return status
}

function programOf(around: Surroundings, done: Done): Command {
  const { terminal } = around
  const program = new Command('undercroft')
    .description('Literate design notebooks for buried protective structures: Markdown in, a calculation package out.')
    .version(around.version)
    .exitOverride()
    .showHelpAfterError('(--help shows how)')
    .configureOutput({ writeOut: text => terminal.answer(text), writeErr: text => terminal.say(printableLines(text)) })
    .addHelpText('after', notes)
  addNotebookCommands(program, around, done)
  addReviewCommands(program, around, done)
  return program
}
