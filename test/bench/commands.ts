import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { evaluateFile } from '../../src/command/evaluated.ts'
import { provePackage } from '../../src/command/package-texts.ts'
import { assets } from '../../src/sheets/assets.ts'
import { openBrowser } from '../../src/sheets/pdf/index.ts'
import { wholePrint } from '../sheets/whole-print.ts'
import { inTurnOnce, median, say, timesOf } from './measure.ts'

const node = process.execPath
const command = resolve('dist/command.js')

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
    const [empty, check] = await inTurnOnce(
      [() => launch(['empty.js'], folder), () => launch([command, 'check', 'shelter.md'], folder)],
      15,
    )
    const times = timesOf(check, empty)
    say('empty Node start', `${median(empty ?? []).toFixed(0)} ms`)
    say('check of the starter, cold', `${times.toFixed(2)} times`, {
      text: 'at most 3 times an empty start',
      met: times <= 3,
    })
    await benchIssue(folder)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

async function benchIssue(folder: string): Promise<void> {
  const path = join(folder, 'long.md')
  const text = readFileSync('examples/skerry-point/skerry-point.md', 'utf8')
  const once = await printedPages(path, text)
  const copies = Math.max(1, Math.round(100 / once.pages))
  const long = copies === 1 ? once : await printedPages(path, manyTimes(text, copies))
  launch([command, 'issue', path, '--out', 'out'], folder)
  const [ours, floor] = await inTurnOnce(
    [
      () => launch([command, 'issue', path, '--out', 'out'], folder),
      async () => void (await print(long.html, long.pages)),
    ],
    3,
  )
  const times = timesOf(ours, floor)
  say(`issue of ${long.pages} pages, numbers guessed right`, `${(median(ours ?? []) / 1000).toFixed(2)} s`)
  say('  against the browser printing the finished HTML once', `${times.toFixed(2)} times`, {
    text: 'at most 1.3 times',
    met: times <= 1.3,
  })
}

/** The print text of a notebook, and how many pages it makes. */
async function printedPages(path: string, text: string): Promise<{ html: string; pages: number }> {
  writeFileSync(path, text)
  const look = await assets(resolve('dist'))
  const options = {
    version: '0.0.0',
    name: 'bench.md',
    command: 'bench',
    draft: false,
    paper: 'A4',
    date: undefined,
    assets: look,
  } as const
  const html = wholePrint(provePackage(await evaluateFile(path), options).compose().print)
  return { html, pages: (await print(html)).pages }
}

/** Prints once where the number of pages is given, which stands on the cover; without, once more to learn it. */
async function print(html: string, pages?: number): Promise<{ pages: number }> {
  const browser = await openBrowser({ variables: process.env })
  if (!browser.ok) throw new Error(browser.says)
  try {
    const done = await browser.print(html.replaceAll(/data-page-of="[^"]*"/g, ''), {
      fonts: ['*'],
      ...(pages === undefined ? {} : { guess: { pages, pageOf: {}, before: [0] } }),
    })
    if (!done.ok) throw new Error(done.says)
    if (pages !== undefined && done.prints !== 1) throw new Error('the floor is one print')
    return done
  } finally {
    await browser.close()
  }
}

/** The example's body several times over, the blocks of each copy under names of their own. */
function manyTimes(text: string, times: number): string {
  const [, front = '', body = ''] = /^(---\n[\s\S]*?\n---\n)([\s\S]*)$/.exec(text) ?? []
  const names = [...body.matchAll(/^```(?:assume|calc [\w-]+|work) (\w+)/gm)].map(found => found[1] ?? '').join('|')
  const heads = new RegExp(`^(\`\`\`(?:assume|calc [\\w-]+|work) (?:${names}))$`, 'gm')
  const uses = new RegExp(`(?<![\\w.])(${names})(?=\\.[A-Za-z])`, 'g')
  const seen = new RegExp(`(:see\\[(?:${names}))\\]`, 'g')
  const copyOf = (copy: number): string =>
    copy === 0
      ? body
      : body.replaceAll(heads, `$1_${copy}`).replaceAll(uses, `$1_${copy}`).replaceAll(seen, `$1_${copy}]`)
  return front + Array.from({ length: times }, (_, copy) => copyOf(copy)).join('\n')
}
