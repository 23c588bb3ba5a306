import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'

/*
 * What V8 compiled of the program, kept beside it by the build. V8 itself looks only at its own version and the length of the program, so that
 * a program that was changed or a file that was damaged would run as something else: a hash over both comes first in the file.
 */
const hashBytes = 32

/** The file of the kept code, of this Node and this program alone. */
export const codeToKeep = (program: Uint8Array, code: Buffer): Buffer => Buffer.concat([hashOf(program, code), code])

/** Returns the kept code of a program; nothing where the file is not there, is damaged, or belongs to another program or another Node. */
export function keptCode(file: string, program: Uint8Array): Buffer | undefined {
  try {
    const kept = readFileSync(file)
    const code = kept.subarray(hashBytes)
    return hashOf(program, code).equals(kept.subarray(0, hashBytes)) ? code : undefined
  } catch {
    return undefined
  }
}

const hashOf = (program: Uint8Array, code: Buffer): Buffer =>
  createHash('sha256').update(`${process.version} ${process.arch}\n`).update(program).update(code).digest()
