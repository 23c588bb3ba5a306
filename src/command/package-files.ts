import { basename, dirname, extname, join } from 'node:path'
import { exitStatus } from './exit-status.ts'
import { isSame } from './is-same.ts'
import { Stopped } from './stopped.ts'

/** Where a package is written. */
export interface PackageFiles {
  readonly html: string
  readonly pdf: string
}

/** Returns the files of a notebook's package; refuses where one of them is the notebook itself. */
export async function packageFiles(
  file: string,
  { out, draft = false }: { readonly out?: string; readonly draft?: boolean },
): Promise<PackageFiles> {
  const name = file === '-' ? 'package' : basename(file, extname(file))
  const target = join(out ?? (file === '-' ? '.' : dirname(file)), draft ? `${name}-draft` : name)
  const files = { html: `${target}.html`, pdf: `${target}.pdf` }
  for (const path of Object.values(files))
    if (await isSame(path, file))
      throw new Stopped(
        exitStatus.called,
        `The package would be written over its own notebook \`${file}\``,
        'Give the notebook the ending `.md`, or name another folder with `--out FOLDER`',
      )
  return files
}
