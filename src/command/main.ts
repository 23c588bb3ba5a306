#!/usr/bin/env node
import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { exitStatus } from './exit-status.ts'
import { runProgram } from './program.ts'
import { Stopped } from './stopped.ts'
import { terminalOf } from './terminal.ts'

// The program is built into dist/, beside its templates and fonts.
const assets = dirname(fileURLToPath(import.meta.url))
const { version } = JSON.parse(readFileSync(join(assets, '..', 'package.json'), 'utf8')) as { version: string }
const terminal = terminalOf(process)
const stop = new AbortController()
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => stop.abort(signal))

try {
  process.exitCode = await runProgram(process.argv.slice(2), {
    terminal,
    version,
    assets,
    variables: process.env,
    signal: stop.signal,
  })
} catch (thrown) {
  if (thrown instanceof Stopped) {
    terminal.say(thrown.help ? `${thrown.message}\n${thrown.help}` : thrown.message)
    process.exitCode = thrown.status
  } else {
    terminal.say(
      `This is a fault of undercroft ${version} itself, not of your notebook. Please report it with the notebook.\n`,
    )
    terminal.say(thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown))
    process.exitCode = exitStatus.bug
  }
}
