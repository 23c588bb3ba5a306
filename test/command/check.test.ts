import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { deep, failing, faulty, folderWith, sound } from './notebooks.ts'
import { command, undercroft } from './run-undercroft.ts'

describe('check', () => {
  it('prints the summary of checks on standard output and nothing else, and ends with 0', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { status, stdout, stderr } = await undercroft(['check', 'roof.md'], { cwd })
    expect([status, stderr]).toEqual([0, ''])
    // 20 kN/m² on 3 m: 20 * 3^2 / 8 = 22.5, by hand.
    expect(stdout).toMatch(/^1\.02 +strip +what the slab carries +22\.50 kN +40\.00 kN +0\.563 +satisfied$/m)
    expect(stdout).toMatch(/^roof\.md: 1 check, all satisfied, largest ratio 0\.563$/m)
  })

  it('ends with 3 for a check that is not satisfied, which it names in words', async () => {
    const cwd = folderWith({ 'roof.md': failing })
    const { status, stdout, stderr } = await undercroft(['check', 'roof.md'], { cwd })
    expect(status).toBe(3)
    expect(stdout).toMatch(/NOT SATISFIED$/m)
    expect(stdout).toContain('roof.md: 1 check, 1 not satisfied')
    expect(stderr).toContain('roof.md:18:1  warning  check-not-satisfied')
  })

  it('ends with 1 for an error, with its place, a frame and what would be right, and never says that all is satisfied', async () => {
    const cwd = folderWith({ 'roof.md': faulty })
    const { status, stdout, stderr } = await undercroft(['check', 'roof.md'], { cwd })
    expect(status).toBe(1)
    expect(stderr).toContain('roof.md:17:17  error  name-unknown\nNothing here is named `site.spam`')
    expect(stderr).toContain('    17 | M = site.load * site.spam^2 / 8')
    expect(stderr).toContain('help: Did you mean `site.span`?')
    expect(stdout).toBe('roof.md: 1 error; no check was reached\n')
  })

  it('says with an error that only some checks may have been reached', async () => {
    const cwd = folderWith({ 'roof.md': `${sound}\nAnd :value[strip.N].\n` })
    const { status, stdout } = await undercroft(['check', 'roof.md'], { cwd })
    expect(status).toBe(1)
    expect(stdout).toContain('roof.md: 1 error; 1 check reached, all satisfied')
  })

  it('ends with the worst of several files and checks them all', async () => {
    const cwd = folderWith({ 'a.md': failing, 'b.md': faulty, 'c.md': sound })
    const { status, stdout } = await undercroft(['check', 'a.md', 'b.md', 'c.md'], { cwd })
    expect(status).toBe(1)
    expect(stdout.match(/^[abc]\.md:/gm)).toEqual(['a.md:', 'b.md:', 'c.md:'])
  })

  it('checks the other files where one cannot be read, and ends with 2', async () => {
    const cwd = folderWith({ 'a.md': sound })
    const { status, stdout, stderr } = await undercroft(['check', 'none.md', 'a.md'], { cwd })
    expect(status).toBe(2)
    expect(stderr).toBe('`none.md` cannot be read: there is no such file or folder\n')
    expect(stdout).toContain('a.md: 1 check, all satisfied')
  })

  it('gives the same as data with --format json, and says nothing besides', async () => {
    const cwd = folderWith({ 'a.md': failing, 'b.md': faulty })
    const { status, stdout, stderr } = await undercroft(['check', 'a.md', 'b.md', 'c.md', '--format', 'json'], { cwd })
    expect([status, stderr]).toEqual([2, ''])
    const [a, b, c] = JSON.parse(stdout)
    expect(a.checks).toEqual([
      {
        block: 'strip',
        number: '1.02',
        says: 'what the slab carries',
        satisfied: false,
        outside_limits: false,
        methods_differ: false,
        ratio: 62.5 / 40,
      },
    ])
    expect(a.diagnostics[0]).toMatchObject({ path: 'a.md', rule: 'check-not-satisfied', severity: 'warning' })
    expect(b.diagnostics[0]).toMatchObject({
      path: 'b.md',
      rule: 'name-unknown',
      severity: 'error',
      place: { line: 17, column: 17 },
      help: 'Did you mean `site.span`?',
    })
    expect(c).toEqual({
      path: 'c.md',
      unread: '`c.md` cannot be read: there is no such file or folder',
      checks: [],
      diagnostics: [],
    })
  })

  it('counts and names apart what is satisfied only outside the limits of the method, the second method’s checks too', async () => {
    const cwd = folderWith({ 'deep.md': deep })
    const { status, stdout } = await undercroft(['check', 'deep.md'], { cwd })
    expect(status).toBe(0)
    expect(stdout).toMatch(/^1\.\d\d +shield +the protection factor is as required .* satisfied but outside limits$/m)
    expect(stdout).toMatch(/^1\.\d\d +shield +the protection factor by the second method .* satisfied$/m)
    expect(stdout).toContain('deep.md: 2 checks, 1 satisfied but outside limits, 1 satisfied, largest')
    expect(stdout).not.toContain('all satisfied')
  })

  it('gives the doubt as data', async () => {
    const cwd = folderWith({ 'deep.md': deep })
    const { stdout } = await undercroft(['check', 'deep.md', '--format', 'json'], { cwd })
    expect(JSON.parse(stdout)[0].checks).toMatchObject([
      { satisfied: true, outside_limits: true, methods_differ: false },
      { satisfied: true, outside_limits: false, methods_differ: false },
    ])
  })

  it('reads standard input for -, once', async () => {
    const cwd = folderWith()
    const { status, stdout } = await undercroft(['check', '-'], { cwd, input: sound })
    expect([status, stdout.includes('standard input: 1 check, all satisfied')]).toEqual([0, true])
    const twice = await undercroft(['check', '-', '-'], { cwd, input: sound })
    expect([twice.status, twice.stderr]).toEqual([2, 'Standard input can be read once: give `-` once\n'])
  })

  it('colours only where it is asked to, and says the same words', async () => {
    const cwd = folderWith({ 'roof.md': faulty })
    const plain = await undercroft(['check', 'roof.md'], { cwd })
    const coloured = await undercroft(['check', 'roof.md'], { cwd, env: { FORCE_COLOR: '1' } })
    expect(plain.stderr).not.toContain('\u001b')
    expect(coloured.stderr).toContain('\u001b[31m')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: that is what colour is made of
    expect(coloured.stderr.replaceAll(/\u001b\[\d+m/g, '')).toBe(plain.stderr)
  })

  it('colours to a terminal, and not where NO_COLOR asks for none', async context => {
    const cwd = folderWith({ 'roof.md': faulty })
    const inTerminal = (before: string) =>
      spawnSync(
        'script',
        ['-qec', `env -u FORCE_COLOR ${before} '${process.execPath}' '${command}' check roof.md`, '/dev/null'],
        {
          cwd,
          encoding: 'utf8',
          env: { ...process.env, TERM: 'xterm' },
        },
      )
    const plain = inTerminal('NO_COLOR=1')
    if (plain.error) return context.skip('there is no `script` to make a terminal with')
    expect(plain.stdout).toContain('name-unknown')
    expect(plain.stdout).not.toContain('\u001b[31m')
    expect(inTerminal('NO_COLOR=').stdout).toContain('\u001b[31m')
  })

  it('lets nothing in a notebook or a path steer the terminal', async () => {
    const name = 'ro\u001b[2Jof.md'
    const cwd = folderWith({ [name]: sound.replace('# what the slab carries', '# \u202eslab \u001b[31mcarries') })
    const { stdout, stderr } = await undercroft(['check', name], { cwd })
    // biome-ignore lint/suspicious/noControlCharactersInRegex: that is what must not be there
    expect(`${stdout}${stderr}`).not.toMatch(/[\u001b\u202e]/)
  })

  it('finds the notebook by any path', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    expect((await undercroft(['check', join(cwd, 'roof.md')], { cwd: '/' })).status).toBe(0)
  })
})
