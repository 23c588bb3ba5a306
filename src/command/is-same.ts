import { fstat, type Stats } from 'node:fs'
import { stat } from 'node:fs/promises'
import { promisify } from 'node:util'

/** Whether two paths lead to one file that is there; `-` is standard input, which may be a file. */
export async function isSame(path: string, file: string): Promise<boolean> {
  const [one, other] = await Promise.all([found(path), found(file)])
  return one !== undefined && one.ino === other?.ino && one.dev === other.dev
}

const found = (path: string): Promise<Stats | undefined> =>
  (path === '-' ? promisify(fstat)(0) : stat(path)).catch(() => undefined)
