import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openBrowser } from '../../src/sheets/pdf/index.ts'
import { milliseconds, say } from './measure.ts'

const node = process.execPath
const command = join(import.meta.dirname, 'command.js')

function launch(args: readonly string[], cwd: string): void {
  const done = spawnSync(node, args, { cwd, encoding: 'utf8' })
  if (done.status !== 0 && done.status !== 3) throw new Error(`${args.join(' ')}: ${done.stderr}`)
}

/** `check` cold against an empty Node start; `issue` against the browser printing the finished HTML once. */
export async function benchCommands(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'undercroft-bench-'))
  try {
    writeFileSync(join(folder, 'empty.js'), '')
    writeFileSync(join(folder, 'shelter.md'), readFileSync('templates/starter/shelter.md'))
    const empty = await milliseconds(() => launch(['empty.js'], folder), 9)
    const check = await milliseconds(() => launch([command, 'check', 'shelter.md'], folder), 9)
    say('empty Node start', `${empty.toFixed(0)} ms`)
    say('check of the starter, cold', `${(check / empty).toFixed(2)} times`, {
      text: 'at most 3 times an empty start',
      met: check / empty <= 3,
    })
    await benchIssue(folder)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

async function benchIssue(folder: string): Promise<void> {
  writeFileSync(join(folder, 'long.md'), manyTimes(readFileSync('examples/skerry-point/skerry-point.md', 'utf8'), 4))
  const issue = (): void => launch([command, 'issue', 'long.md', '--out', 'out'], folder)
  issue()
  const ours = await milliseconds(issue, 3)
  const printed = readFileSync(join(folder, 'out', 'long.print.html'), 'utf8')
  const floor = await milliseconds(async () => {
    const browser = await openBrowser({ variables: process.env })
    if (!browser.ok) throw new Error(browser.says)
    const done = await browser.print(printed, { fonts: ['*'] })
    await browser.close()
    if (!done.ok) throw new Error(done.says)
    say('  (pages)', String(done.pages))
  }, 3)
  say('issue, numbers guessed right, against the browser alone', `${(ours / floor).toFixed(2)} times`, {
    text: 'at most 1.3 times',
    met: ours / floor <= 1.3,
  })
}

/** The example's body several times over, block names made distinct. */
function manyTimes(text: string, times: number): string {
  const [, front = '', body = ''] = /^(---\n[\s\S]*?\n---\n)([\s\S]*)$/.exec(text) ?? []
  const names = [...body.matchAll(/^```(?:assume|calc [\w-]+|work) (\w+)/gm)].map(found => found[1] ?? '')
  const copies = Array.from({ length: times }, (_, copy) =>
    copy === 0
      ? body
      : names.reduce((so, name) => so.replaceAll(new RegExp(`\\b${name}(?=[.\\]\\n])`, 'g'), `${name}_${copy}`), body),
  )
  return front + copies.join('\n')
}
