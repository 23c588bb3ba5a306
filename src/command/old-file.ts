import { evaluateBytes } from './evaluated.ts'
import { issuedResults } from './package-editions.ts'
import { readInput } from './read-input.ts'
import { aPackage, isPackage, readPackage } from './read-package.ts'
import type { Side } from './side.ts'

/** The older side of a comparison from a file: a notebook, or an issued package, whose attached notebook it is then. */
export async function oldFile(path: string): Promise<Side> {
  const bytes = await readInput(path, aPackage)
  if (!isPackage(bytes)) return { label: path, evaluated: await evaluateBytes(bytes, path) }
  const { name, notebook, results } = await readPackage(path, bytes)
  return {
    label: path,
    evaluated: await evaluateBytes(notebook, name),
    issued: issuedResults(results),
  }
}
