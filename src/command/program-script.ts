import { createRequire } from 'node:module'
import { dirname } from 'node:path'
import { Script } from 'node:vm'

/** A CommonJS file in ASCII as a script that V8's kept code can be given to. Code that V8 does not take is left aside, and the file compiled. */
export function programScript(file: string, program: Buffer, code?: Buffer): Script {
  const text = `(function (exports, require, module, __filename, __dirname) { ${program.toString('latin1')}\n})`
  return new Script(text, { filename: file, ...(code ? { cachedData: code } : {}) })
}

/** Runs the script of a file as Node runs a CommonJS file. */
export function runProgramScript(script: Script, file: string): void {
  const module = { exports: {} }
  const run = script.runInThisContext() as (...given: unknown[]) => void
  run.call(module.exports, module.exports, createRequire(file), module, file, dirname(file))
}
