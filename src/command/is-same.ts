import { realpath } from 'node:fs/promises'

/** Whether two paths lead to one file that is there. */
export async function isSame(path: string, file: string): Promise<boolean> {
  const [one, other] = await Promise.all([path, file].map(each => realpath(each).catch(() => undefined)))
  return one !== undefined && one === other
}
