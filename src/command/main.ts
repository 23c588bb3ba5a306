import { readFileSync } from 'node:fs'
import module from 'node:module'
import { join } from 'node:path'
import { usersCacheFolder } from '../sheets/pdf/cache-folder.ts'
import { keptCode } from './kept-code.ts'
import { programScript, runProgramScript } from './program-script.ts'

// Built as CommonJS, which starts sooner. A cold start is mostly compiling: where the build kept the compiled code and it is of this Node, the
// program runs from that; elsewhere Node keeps it for the next run, where it can (22.1 and later).
const file = join(__dirname, 'program.cjs')
const program = readFileSync(file)
const code = keptCode(join(__dirname, 'program.code'), program)
if (code) runProgramScript(programScript(file, program, code), file)
else {
  const { enableCompileCache } = module as { enableCompileCache?: (folder: string) => unknown }
  enableCompileCache?.(join(usersCacheFolder(process.env), 'program'))
  module.createRequire(file)(file)
}
