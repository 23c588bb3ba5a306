import { createReadStream, createWriteStream } from 'node:fs'
import { chmod, readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { arch, platform } from 'node:os'
import { dirname, join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { createBrotliDecompress } from 'node:zlib'
import { extract } from 'tar-fs'
import { systemCode } from './print-failure.ts'
import { unpackOnce } from './unpack-once.ts'

/** The npm package that carries a Chromium for Linux on x64, as it lies on the disk. */
export interface ChromiumPackage {
  readonly version: string
  /** Folder of the packed files. */
  readonly packed: string
}

/** Where unpacked files are kept, and what stops the unpacking. */
export interface UnpackingPlace {
  readonly cache: string
  readonly signal?: AbortSignal | undefined
}

/** The unpacked browser and the libraries it needs from us on a bare system. */
export interface PackedChromium {
  readonly path: string
  readonly libraries: string
}

/** Returns the installed package, or undefined where it is left out. It is found, never imported: importing it changes the environment. */
export async function findChromiumPackage(): Promise<ChromiumPackage | undefined> {
  try {
    const entry = createRequire(import.meta.url).resolve('@sparticuz/chromium')
    const root = dirname(dirname(dirname(entry)))
    const facts: unknown = JSON.parse(await readFile(join(root, 'package.json'), 'utf8'))
    return { version: versionIn(facts), packed: join(root, 'bin') }
  } catch (thrown) {
    if (systemCode(thrown) === undefined) throw thrown
    return undefined
  }
}

function versionIn(facts: unknown): string {
  const version = typeof facts === 'object' && facts !== null && 'version' in facts ? facts.version : undefined
  return typeof version === 'string' ? version : 'unknown'
}

/** Whether the packed browser is made for this machine. */
export function packedChromiumRuns(): boolean {
  return platform() === 'linux' && arch() === 'x64'
}

/** Returns the browser, unpacked into the cache at its first use (197 MB, about three seconds). */
export async function unpackChromium(source: ChromiumPackage, place: UnpackingPlace): Promise<PackedChromium> {
  const { signal } = place
  const folder = await unpackOnce(join(place.cache, `chromium-${source.version}-x64`), {
    needs: ['chromium', 'lib/libnss3.so', 'lib/libexpat.so.1'],
    fill: async empty => {
      const browser = join(empty, 'chromium')
      await pipeline(
        createReadStream(join(source.packed, 'chromium.br')),
        createBrotliDecompress(),
        createWriteStream(browser),
        { signal },
      )
      await chmod(browser, 0o755)
      await unpackArchive(join(source.packed, 'al2023.tar.br'), { into: empty, signal })
    },
  })
  return { path: join(folder, 'chromium'), libraries: join(folder, 'lib') }
}

/** Returns the folder with the one font family that every machine falls back to. */
export async function unpackFonts(source: ChromiumPackage, place: UnpackingPlace): Promise<string> {
  const { signal } = place
  const folder = await unpackOnce(join(place.cache, `fonts-${source.version}`), {
    needs: ['fonts/Open_Sans/OpenSans-Regular.ttf'],
    fill: empty => unpackArchive(join(source.packed, 'fonts.tar.br'), { into: empty, signal }),
  })
  return join(folder, 'fonts')
}

/** Unpacked by root, the files would otherwise belong to whoever packed them. */
const OUR_OWN = { chown: false, dmode: 0o755 }

function unpackArchive(archive: string, to: { into: string; signal: AbortSignal | undefined }): Promise<void> {
  return pipeline(createReadStream(archive), createBrotliDecompress(), extract(to.into, OUR_OWN), {
    signal: to.signal,
  })
}
