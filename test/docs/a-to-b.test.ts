import { execFileSync } from 'node:child_process'
import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { folderWith } from '../command/notebooks.ts'
import { command } from '../command/run-undercroft.ts'

const page = new URL('../../docs/8-a-to-b.md', import.meta.url)
const fenced = /```(sh|text|diff)\n([\s\S]*?)```/g

/** A folder with a program `undercroft` on its path, and everything git signs with fixed, so that its hashes are. */
function workplace() {
  const folder = folderWith()
  const [cwd, bin] = [join(folder, 'job'), join(folder, 'bin')]
  for (const each of [cwd, bin]) mkdirSync(each)
  writeFileSync(join(bin, 'undercroft'), `#!/bin/sh\nexec "${process.execPath}" "${command}" "$@"\n`)
  chmodSync(join(bin, 'undercroft'), 0o755)
  const who = ['AUTHOR', 'COMMITTER'].flatMap(as => [
    [`GIT_${as}_NAME`, 'M. Aird'],
    [`GIT_${as}_EMAIL`, 'aird@example.org'],
    [`GIT_${as}_DATE`, '2026-03-04T12:00:00Z'],
  ])
  const env = {
    ...process.env,
    ...Object.fromEntries(who),
    PATH: `${bin}${delimiter}${process.env.PATH}`,
    GIT_CONFIG_GLOBAL: '/dev/null',
    NO_COLOR: '1',
  }
  return { cwd, run: (line: string) => ran(line, { cwd, env }) }
}

/** Standard output of a line of shell; a check that is not satisfied (3) is an answer too. */
function ran(line: string, where: { cwd: string; env: NodeJS.ProcessEnv }): string {
  const script = `set -e\n${line}`
  try {
    return execFileSync('sh', ['-c', script], { ...where, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] })
  } catch (thrown) {
    const { status, stdout, stderr } = thrown as { status: number; stdout: string; stderr: string }
    if (status === 3) return stdout
    throw new Error(`${line} ended with ${status}: ${stderr}`)
  }
}

/** Puts the lines with `+` in place of those with `-` before them. */
function edit(path: string, diff: string): void {
  let text = readFileSync(path, 'utf8')
  for (const [, from = '', to = ''] of diff.matchAll(/^-(.*)\n\+(.*)$/gm)) {
    expect(text).toContain(from)
    text = text.replace(from, to)
  }
  writeFileSync(path, text)
}

function toldAnew(): string {
  const { cwd, run } = workplace()
  return readFileSync(page, 'utf8').replaceAll(fenced, (whole, kind: string, body: string) => {
    if (kind === 'diff') edit(join(cwd, 'shelter/shelter.md'), body)
    if (kind !== 'text') {
      if (kind === 'sh') run(body)
      return whole
    }
    const line = /^\$ (.+)$/m.exec(body)?.[1] ?? ''
    return `\`\`\`text\n$ ${line}\n${run(line)}\`\`\``
  })
}

describe('docs', () => {
  it('8-a-to-b.md: the whole story runs in a real repository and prints what it shows', () => {
    const anew = toldAnew()
    if (process.env.UPDATE_DOCS) writeFileSync(page, anew)
    expect(readFileSync(page, 'utf8')).toBe(anew)
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8')
    const [, excerpt = ''] = /```text\n([\s\S]*?)```/.exec(readme) ?? []
    expect(excerpt).toContain('Ratios of checks that moved')
    expect(anew).toContain(excerpt)
    expect(anew).toMatch(/prove A\/shelter\.pdf\n[\s\S]*?byte for byte what its notebook gives\n```/)
    expect(anew).toMatch(/prove B\/shelter\.pdf\n[\s\S]*?byte for byte what its notebook gives\n```/)
  }, 240_000)
})
