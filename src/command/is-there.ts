import { lstat } from 'node:fs/promises'

/** Whether something of that name is there, a link that leads nowhere included. */
export const isThere = (path: string): Promise<boolean> =>
  lstat(path).then(
    () => true,
    () => false,
  )
