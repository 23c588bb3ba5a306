import { type SpawnOptions, spawn } from 'node:child_process'
import { readdirSync, statSync } from 'node:fs'
import { join, resolve } from 'node:path'

const root = resolve(import.meta.dirname, '../..')
export const dist = join(root, 'dist')
export const command = join(dist, 'command.js')

/** What a run of the built program came to. */
export interface Ran {
  readonly status: number | null
  readonly signal: NodeJS.Signals | null
  readonly stdout: string
  readonly stderr: string
}

export interface RunOptions {
  readonly cwd: string
  readonly input?: string | Uint8Array
  /** Added to the environment; undefined takes a variable out. */
  readonly env?: Readonly<Record<string, string | undefined>>
  readonly stdio?: SpawnOptions['stdio']
  readonly uid?: number
  readonly program?: string
}

/** Throws where dist/ is not what the sources give: a test never builds by itself. */
function demandFreshBuild(): void {
  const built = statSync(command, { throwIfNoEntry: false })?.mtimeMs
  if (built === undefined) throw new Error('dist/ is missing: run `npm run build` first')
  for (const name of ['src', 'templates']) {
    const entries = readdirSync(join(root, name), { recursive: true, withFileTypes: true })
    const files = entries.filter(entry => entry.isFile()).map(({ parentPath, name }) => join(parentPath, name))
    const newer = files.find(file => statSync(file).mtimeMs > built)
    if (newer) throw new Error(`dist/ is older than ${newer}: run \`npm run build\` first`)
  }
}
demandFreshBuild()

/** Starts the built program as a user would; `done` is what it comes to. */
export function startUndercroft(args: readonly string[], options: RunOptions) {
  const { cwd, input, env = {}, stdio = 'pipe', uid, program = command } = options
  const variables = {
    ...process.env,
    NO_COLOR: undefined,
    FORCE_COLOR: undefined,
    SOURCE_DATE_EPOCH: undefined,
    ...env,
  }
  const child = spawn(process.execPath, [program, ...args], {
    cwd,
    env: Object.fromEntries(Object.entries(variables).filter(([, value]) => value !== undefined)),
    stdio,
    ...(uid === undefined ? {} : { uid, gid: uid }),
  })
  const text = { stdout: '', stderr: '' }
  for (const name of ['stdout', 'stderr'] as const)
    child[name]?.setEncoding('utf8').on('data', (piece: string) => {
      text[name] += piece
    })
  child.stdin?.on('error', () => undefined)
  child.stdin?.end(input)
  const done = new Promise<Ran>((settle, fail) => {
    child.on('error', fail)
    child.on('close', (status, signal) => settle({ status, signal, ...text }))
  })
  return { child, done }
}

/** A user to whom permissions apply: this one, or for root another; nothing where that one cannot reach the program. */
export async function plainUser(): Promise<{ readonly uid?: number } | undefined> {
  if (process.getuid?.() !== 0) return {}
  const nobody = { uid: 65534 }
  const ran = await undercroft(['--version'], { cwd: '/', ...nobody }).catch(() => undefined)
  return ran?.status === 0 ? nobody : undefined
}

/** Runs the built program to its end. */
export const undercroft = (args: readonly string[], options: RunOptions): Promise<Ran> =>
  startUndercroft(args, options).done
