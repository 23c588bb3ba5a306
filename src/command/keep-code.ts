import { readFileSync, writeFileSync } from 'node:fs'
import { codeToKeep } from './kept-code.ts'
import { programScript, runProgramScript } from './program-script.ts'

/*
 * Part of the build, not of the program: `keep-code PROGRAM FILE check NOTEBOOK` runs the program and then keeps in FILE what V8 compiled for that.
 */
const [file = '', keep = ''] = process.argv.splice(2, 2)
const program = readFileSync(file)
const script = programScript(file, program)
process.on('exit', () => writeFileSync(keep, codeToKeep(program, script.createCachedData())))
runProgramScript(script, file)
