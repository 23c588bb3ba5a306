import { spawnSync } from 'node:child_process'
import { resolve } from 'node:path'
import { expect, it } from 'vitest'

const script = resolve(import.meta.dirname, 'bare-root.sh')

it('the built program prints the example on a bare Debian, as root and as nobody, with the same bytes', {
  timeout: 600_000,
}, context => {
  const done = spawnSync('sh', [script], { encoding: 'utf8' })
  const last = done.stdout.trim().split('\n').at(-1) ?? ''
  if (last.startsWith('SKIPPED')) {
    process.stdout.write(`bare root: ${last}\n`)
    context.skip(last)
  }
  expect(done.status, done.stdout + done.stderr).toBe(0)
  expect(last).toMatch(/^PROVED/)
})
