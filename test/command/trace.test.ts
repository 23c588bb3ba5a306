import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { textWidth } from '../../src/diagnostic/text-width.ts'
import { deep, failing, faulty, folderWith, sound } from './notebooks.ts'
import { undercroft } from './run-undercroft.ts'

const schema = JSON.parse(readFileSync('docs/trace.schema.json', 'utf8'))
const skerry = readFileSync('examples/skerry-point/skerry-point.md')

describe('trace', () => {
  it('prints a value with symbol, formula, numbers, source and place, down to its assumptions and up to its users', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { status, stdout, stderr } = await undercroft(['trace', 'roof.md', 'strip.M'], { cwd })
    expect([status, stderr]).toEqual([0, ''])
    expect(stdout).toBe(`1.01 strip.M = 22.50 kN
  moment of a strip  = site.load * site.span^2 / 8  roof.md:17:1

Rests on
  2 assumptions: A1, A2
├ A2 site.load = 20 kN/m²
│     soil on the roof  roof.md:13:1
└ A1 site.span = 3 m
      drawing SP-12  roof.md:12:1

Used by
  1 check: 1.02
├ 1.02 check: satisfied
│     what the slab carries  M <= 40 kN*m/m  (ratio 0.563)  roof.md:18:1
└ in the text
      “The moment is :value[strip.M].”  roof.md:21:15
`)
  })

  it('--down and --up show one way; a check is found by its number, and ends with 3 where it is not satisfied', async () => {
    const cwd = folderWith({ 'roof.md': failing })
    const down = await undercroft(['trace', 'roof.md', '1.02', '--down'], { cwd })
    expect(down.status).toBe(3)
    expect(down.stdout).toMatch(/^1\.02 check: NOT SATISFIED\n/)
    expect(down.stdout).toContain('\nRests on\n')
    expect(down.stdout).not.toContain('Used by')
    const up = await undercroft(['trace', 'roof.md', 'A1', '--up'], { cwd })
    expect(up.stdout).toContain('\n  1 check: 1.02 NOT SATISFIED\n')
    expect(up.stdout).not.toContain('Rests on')
  })

  it('shows what is met again once, and only what lies on a path to the other end', async () => {
    const cwd = folderWith({ 'skerry.md': skerry })
    const { blocks } = JSON.parse((await undercroft(['results', 'skerry.md'], { cwd })).stdout)
    const at: string = blocks.find(({ name }: { name: string }) => name === 'raft_crack').checks.at(-1).number
    const { stdout } = await undercroft(['trace', 'skerry.md', 'shape.cover', '--to', at], { cwd })
    const places = stdout.split('\n').filter(line => line.endsWith(`${at} check: satisfied`))
    expect(places).toHaveLength(1)
    expect(stdout.split(`${at} check: satisfied  (see above)`).length).toBe(2)
    expect(stdout).toContain(`Is used by ${at} check, by these paths`)
    expect(stdout).not.toContain('flotation')
    const none = await undercroft(['trace', 'skerry.md', 'site.phi_fill', '--to', 'shape.cover'], { cwd })
    expect(none.stdout).toContain('no path leads from one to the other')
  })

  it('keeps within 100 columns, and shows every place once, however deep', async () => {
    const cwd = folderWith({ 'skerry.md': skerry })
    const data = JSON.parse(
      (await undercroft(['trace', 'skerry.md', 'shape.cover', '--up', '--format', 'json'], { cwd })).stdout,
    )
    const { stdout } = await undercroft(['trace', 'skerry.md', 'shape.cover', '--up'], { cwd })
    const lines = stdout.split('\n')
    expect(lines.filter(line => textWidth(line) > 100)).toEqual([])
    expect(stdout).toContain('(goes on below)')
    for (const { name, number, place } of data.nodes.slice(1))
      if (name) {
        const shown = lines.filter(line =>
          new RegExp(`[├└] (?:${number ?? ''} )?${name.replace('.', '\\.')}(?: =|,|:|$)`).test(line),
        )
        expect([name, shown.filter(line => !line.endsWith('(see above)')).length]).toEqual([name, 1])
        expect(stdout).toContain(`skerry.md:${place.line}:${place.column}`)
      }
  })

  it('as JSON keeps to its schema: each place once, every link to a place that is there', async () => {
    const cwd = folderWith({ 'skerry.md': skerry, 'roof.md': faulty })
    const valid = new Ajv2020({ strict: true, allErrors: true }).compile(schema)
    for (const args of [
      ['1.07'],
      ['wall.M_base', '--down'],
      ['shape.cover', '--to', 'roof.M_x_mid'],
      ['shape.cover', '--to', 'A1'],
    ]) {
      const { stdout } = await undercroft(['trace', 'skerry.md', ...args, '--format', 'json'], { cwd })
      const data = JSON.parse(stdout)
      valid(data)
      expect([args, valid.errors]).toEqual([args, null])
      const ids = data.nodes.map(({ id }: { id: string }) => id)
      expect(new Set(ids).size).toBe(ids.length)
      expect(ids).toContain(data.root)
      for (const { restsOn, usedBy } of data.nodes) for (const id of [...restsOn, ...usedBy]) expect(ids).toContain(id)
    }
  })

  it('refuses an unknown name with the nearest and 2, and says nothing else', async () => {
    const cwd = folderWith({ 'roof.md': failing })
    const { status, stdout, stderr } = await undercroft(['trace', 'roof.md', 'strip.N'], { cwd })
    expect([status, stdout, stderr]).toEqual([2, '', 'No value is called `strip.N`\nDid you mean `strip.M`?\n'])
    expect((await undercroft(['trace', 'roof.md', 'strip.M', '--to', 'site.spam'], { cwd })).status).toBe(2)
  })

  it('knows a check by the name that the record has for it, and refuses both ends alike', async () => {
    const cwd = folderWith({ 'roof.md': sound, 'shield.md': deep, 'broken.md': sound.replace('span: {', 'span {') })
    const check = await undercroft(['trace', 'shield.md', 'shield.protection', '--down'], { cwd })
    expect([check.status, check.stdout]).toEqual([0, expect.stringMatching(/^1\.\d+ check: satisfied/)])
    const listed = JSON.parse((await undercroft(['tick', 'roof.md', '--format', 'json'], { cwd })).stdout)
    const { step } = listed.steps.at(-1)
    expect((await undercroft(['trace', 'roof.md', `strip.${step}`], { cwd })).status).toBe(0)
    const same = await undercroft(['trace', 'roof.md', 'strip.M', '--to', 'strip.M'], { cwd })
    expect([same.status, same.stderr]).toEqual([2, '`strip.M` is what is traced\nName another value with `--to`\n'])
    const broken = await undercroft(['trace', 'broken.md', 'wall.N'], { cwd })
    expect([broken.status, broken.stderr]).toEqual([
      2,
      expect.stringMatching(/^No value is called `wall\.N`\n.*\nThe notebook has \d errors?, which may be why/),
    ])
    const word = await undercroft(['trace', 'shield.md', 'shield.material_1', '--up'], { cwd })
    expect([word.status, word.stdout.includes('Nothing uses it')]).toEqual([0, false])
  })

  it('ends with 1 where an error of the notebook stopped the value, and shows the error', async () => {
    const cwd = folderWith({ 'roof.md': faulty })
    const { status, stdout, stderr } = await undercroft(['trace', 'roof.md', 'strip.M'], { cwd })
    expect([status, stdout]).toEqual([1, ''])
    expect(stderr).toContain('name-unknown')
    expect(stderr).toContain('`strip.M` was stopped by an error of the notebook')
  })

  it('is quick on a notebook of 10,000 lines, along a chain of all of them', async () => {
    const lines = Array.from({ length: 9_000 }, (_, index) => `x_${index + 1} = x_${index} + 1 m`)
    const blocks = Array.from({ length: 90 }, (_, part) => {
      const own = lines.slice(part * 100, part * 100 + 100)
      const head = part === 0 ? 'x_0 = site.a' : `x_${part * 100} = v_${part - 1}.x_${part * 100}`
      return `\`\`\`work v_${part}\n${[head, ...own].join('\n')}\n\`\`\`\n\nText.\n`
    })
    const text = `---\ntitle: Long\n---\n\n\`\`\`assume site\na: { value: 1 m, basis: survey }\n\`\`\`\n\n${blocks.join('\n')}`
    const cwd = folderWith({ 'long.md': text })
    const { status, stdout, stderr } = await undercroft(['trace', 'long.md', 'v_89.x_9000'], { cwd })
    expect([status, stderr]).toEqual([0, ''])
    expect(stdout.match(/[└├] /g)?.length).toBe(9_090)
    expect(stdout).toContain('A1 site.a = 1 m')
    expect(stdout.length).toBeLessThan(2e6)
  }, 20_000)
})
