import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import { exitStatus } from './exit-status.ts'
import { runProgram } from './program.ts'
import { reasonOf } from './reason-of.ts'
import { Stopped } from './stopped.ts'
import { terminalOf } from './terminal.ts'
import { untilStopped } from './until-stopped.ts'

/** Put in by the build, from package.json. */
declare const UNDERCROFT_VERSION: string

// The program is built into dist/, beside its templates and fonts.
const assets = dirname(fileURLToPath(import.meta.url))
const version = UNDERCROFT_VERSION
const terminal = terminalOf({ stdout: process.stdout, stderr: process.stderr, lost }, process.env)

process.on('uncaughtException', thrown => {
  fault(thrown)
  process.exit()
})
void runCommand()

/** The program is one CommonJS file when built, which cannot wait at its top. */
async function runCommand(): Promise<void> {
  try {
    demandWorkingFolder()
    process.exitCode = await runProgram(process.argv.slice(2), {
      terminal,
      version,
      assets,
      variables: process.env,
      untilStopped,
    })
  } catch (thrown) {
    if (thrown instanceof Stopped) {
      terminal.say(thrown.words)
      process.exitCode = thrown.status
    } else fault(thrown)
  } finally {
    terminal.done()
  }
}

/** A shell can stand in a folder that was removed, where no path leads anywhere. */
function demandWorkingFolder(): void {
  try {
    process.cwd()
  } catch (thrown) {
    const says = `The working folder cannot be used: ${reasonOf(thrown)}`
    throw new Stopped(exitStatus.called, says, 'Go to another folder with `cd`, and call again')
  }
}

function fault(thrown: unknown): void {
  terminal.say(
    `This is a fault of undercroft ${version} itself, not of your notebook. Please report it with the notebook.\n`,
  )
  terminal.say(thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown))
  process.exitCode = exitStatus.bug
}

/** The answer is lost: whatever the command comes to, it did not reach the user. */
function lost(thrown: Error): void {
  terminal.say(`The answer cannot be printed: ${reasonOf(thrown)}`)
  process.on('exit', () => {
    process.exitCode = exitStatus.written
  })
}
