import { closeSync, openSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { failing, faulty, folderWith, sound } from './notebooks.ts'
import { undercroft } from './run-undercroft.ts'

const skerry = readFileSync('examples/skerry-point/skerry-point.md', 'utf8')

/** How many lines of one text are not in the other, line by line in order. */
function changedLines(one: string, other: string): string[] {
  const [a, b] = [one.split('\n'), other.split('\n')]
  expect(a.length).toBe(b.length)
  return a.filter((line, index) => line !== b[index])
}

describe('text', () => {
  it('is the notebook with its values in the sentences and its results under each block', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { status, stdout, stderr } = await undercroft(['text', 'roof.md'], { cwd })
    expect([status, stderr]).toEqual([0, ''])
    const table = [
      '',
      '<!-- undercroft: results of strip -->',
      '',
      '| Name | Result | Meaning |',
      '| - | - | - |',
      '| `M` | 22.50 kN | moment of a strip |',
      '| check | satisfied, ratio 0.563 | what the slab carries |',
      '',
      '<!-- undercroft: end of results -->',
      '',
    ].join('\n')
    const wanted = sound
      .replace(/(# what the slab carries\n```\n)/, (_, head) => `${head}${table}`)
      .replace(':value[strip.M]', '22.50 kN')
    expect(stdout).toBe(wanted)
  })

  it('of its own output is the same, byte for byte: CRLF, a byte order mark and a missing last line ending too', async () => {
    const windows = `\ufeff${sound.trimEnd().replaceAll('\n', '\r\n')}`
    for (const text of [skerry, windows]) {
      const cwd = folderWith({ 'a.md': text })
      const once = await undercroft(['text', 'a.md', '--out', 'b.md'], { cwd })
      expect([once.status, once.stdout]).toEqual([0, 'Wrote b.md\n'])
      const written = readFileSync(join(cwd, 'b.md'), 'utf8')
      const printed = await undercroft(['text', 'b.md'], { cwd })
      expect(printed.stdout === written).toBe(true)
      expect(written).not.toBe(text)
      expect(readFileSync(join(cwd, 'a.md'), 'utf8')).toBe(text)
      if (text === windows) expect(written.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
    }
  })

  it('is small under diff: a changed assumption changes only the lines of what it moved', async () => {
    const cwd = folderWith({
      'a.md': skerry,
      'b.md': skerry.replace('batteries:     { value: 48 kN', 'batteries:     { value: 50 kN'),
    })
    const [before, after] = await Promise.all(['a.md', 'b.md'].map(name => undercroft(['text', name], { cwd })))
    const trace = await undercroft(['trace', 'a.md', 'weights.batteries', '--up', '--format', 'json'], { cwd })
    const moved = new Set(
      JSON.parse(trace.stdout).nodes.flatMap(({ name }: { name?: string }) => name?.split('.')[1] ?? []),
    )
    const changed = changedLines(before?.stdout ?? '', after?.stdout ?? '')
    expect(changed[0]).toContain('batteries:')
    expect(changed.length).toBeGreaterThan(1)
    expect(changed.length).toBeLessThanOrEqual(moved.size + 1)
    for (const line of changed.slice(1)) {
      const [, name] = /^\| `(\w+)` \|/.exec(line) ?? []
      if (name) expect(moved).toContain(name)
      else expect(line).toMatch(/^\| check \||\d/)
    }
  })

  it('tells a check that is not satisfied in words, and ends with 3', async () => {
    const { status, stdout } = await undercroft(['text', '-'], { cwd: folderWith(), input: failing })
    expect(status).toBe(3)
    expect(stdout).toContain('| check | NOT SATISFIED, ratio 1.56 | what the slab carries |')
  })

  it('leaves what an error stopped as it was typed, and ends with 1', async () => {
    const { status, stdout, stderr } = await undercroft(['text', '-'], { cwd: folderWith(), input: faulty })
    expect([status, stderr.includes('name-unknown')]).toEqual([1, true])
    expect(stdout).toContain('The moment is :value[strip.M].')
    expect(stdout).not.toContain('undercroft: results')
  })

  it('gives nothing of a file that is no text, and ends with 1', async () => {
    const cwd = folderWith({ 'a.md': new Uint8Array([0x23, 0x20, 0xff, 0x0a]) })
    const { status, stdout, stderr } = await undercroft(['text', 'a.md', '--out', 'b.md'], { cwd })
    expect([status, stdout, stderr.includes('file-not-utf8')]).toEqual([1, '', true])
  })

  it('refuses to write over its own notebook', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { status, stderr } = await undercroft(['text', 'roof.md', '--out', './roof.md'], { cwd })
    expect([status, stderr.includes('is the notebook itself')]).toEqual([2, true])
    expect(readFileSync(join(cwd, 'roof.md'), 'utf8')).toBe(sound)
  })

  it('nor where that stands on standard input, nor over its checking record', async () => {
    const cwd = folderWith({ 'roof.md': sound, 'roof.checked.yaml': '# none\n' })
    const input = openSync(join(cwd, 'roof.md'), 'r')
    const piped = await undercroft(['text', '-', '--out', 'roof.md'], { cwd, stdio: [input, 'pipe', 'pipe'] })
    closeSync(input)
    expect([piped.status, piped.stderr.includes('is the notebook itself')]).toEqual([2, true])
    const record = await undercroft(['text', 'roof.md', '--out', 'roof.checked.yaml'], { cwd })
    expect([record.status, record.stderr.includes('is the checking record')]).toEqual([2, true])
    expect(readFileSync(join(cwd, 'roof.md'), 'utf8')).toBe(sound)
  })

  it('is quick on a notebook of 10,000 lines', async () => {
    const block = (index: number): string =>
      `\`\`\`work v_${index}\n${Array.from({ length: 90 }, (_, line) => `x_${line} = ${line} m * ${index}`).join('\n')}\n\`\`\`\n\nIt is :value[v_${index}.x_3].\n`
    const cwd = folderWith()
    writeFileSync(
      join(cwd, 'long.md'),
      `---\ntitle: Long\n---\n\n${Array.from({ length: 105 }, (_, index) => block(index)).join('\n')}`,
    )
    const { status, stdout } = await undercroft(['text', 'long.md'], { cwd })
    expect(status).toBe(0)
    expect(stdout.match(/undercroft: end of results/g)?.length).toBe(105)
    expect(stdout).not.toContain(':value')
  }, 20_000)
})
