const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EISDIR: 'it is a folder, and a file is needed here',
  ENOTDIR: 'a part of the path is not a folder',
  EACCES: 'access is not permitted',
  EPERM: 'access is not permitted',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EEXIST: 'something of that name is there already',
  EDQUOT: 'the disk quota is used up',
  EFBIG: 'the file is larger than is allowed here',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'links in the path lead in a ring',
  EIO: 'the disk or the terminal fails',
}

/** The system's word for why it refused (`ENOENT`); empty where it was not the system. */
export const codeOf = (thrown: unknown): string =>
  thrown instanceof Error && 'code' in thrown ? String(thrown.code) : ''

/** Why the system refused, in words. */
export const reasonOf = (thrown: unknown): string =>
  reasons[codeOf(thrown)] ?? (thrown instanceof Error ? thrown.message : String(thrown))
