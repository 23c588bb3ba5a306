import { execFileSync } from 'node:child_process'
import { cpSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { deflateSync, inflateSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { folderWith, sound } from './notebooks.ts'
import { dist, undercroft } from './run-undercroft.ts'

let package_: { pdf: Buffer; html: string } | undefined

/** The package of a small notebook, issued once. */
async function issued(): Promise<{ pdf: Buffer; html: string }> {
  if (package_) return package_
  const cwd = folderWith({ 'store.md': sound })
  expect((await undercroft(['issue', 'store.md', '--out', 'out'], { cwd })).status).toBe(0)
  const read = (name: string): Buffer => readFileSync(join(cwd, 'out', name))
  package_ = { pdf: read('store.pdf'), html: read('store.html').toString('utf8') }
  return package_
}

async function prove(name: string, bytes: Uint8Array | string, ...args: string[]) {
  const cwd = folderWith()
  writeFileSync(join(cwd, name), bytes)
  return undercroft(['prove', name, ...args], { cwd })
}

/** The PDF with one stream of a page drawn otherwise; every byte behind it stays where it was. */
function redrawn(pdf: Buffer, change: (drawing: string) => string): Buffer {
  const text = pdf.toString('latin1')
  for (const { index, 0: head } of text.matchAll(/stream\r?\n/g)) {
    const start = index + head.length
    const packed = pdf.subarray(start, text.indexOf('endstream', start))
    const drawing = inflated(packed)
    const changed = drawing && change(drawing)
    if (!changed || changed === drawing) continue
    const again = deflateSync(Buffer.from(changed, 'latin1'), { level: 9 })
    if (again.length > packed.length) throw new Error('the changed drawing takes more room')
    const copy = Buffer.from(pdf)
    Buffer.concat([again, Buffer.alloc(packed.length - again.length)]).copy(copy, start)
    return copy
  }
  throw new Error('no drawing was changed')
}

function inflated(packed: Buffer): string | undefined {
  try {
    const drawing = inflateSync(packed).toString('latin1')
    return / Tf\b/.test(drawing) ? drawing : undefined
  } catch {
    return undefined
  }
}

/** Bytes replaced by as many others, once. */
function replaced(pdf: Buffer, from: string, to: string): Buffer {
  const at = pdf.lastIndexOf(from)
  if (at < 0 || from.length !== to.length) throw new Error(`no \`${from}\` to replace`)
  const copy = Buffer.from(pdf)
  copy.write(to, at)
  return copy
}

describe('prove', () => {
  it('finds both files of a package to be what the notebook gives, to the byte', async () => {
    for (const [name, bytes] of [
      ['a.pdf', (await issued()).pdf],
      ['a.html', (await issued()).html],
    ] as const) {
      const { status, stdout } = await prove(name, bytes)
      expect([name, status]).toEqual([name, 0])
      expect(stdout).toMatch(/: byte for byte what its notebook gives\n$/)
    }
  })

  it('finds a changed number in the text of the PDF, and its page', async () => {
    const changed = redrawn((await issued()).pdf, drawing =>
      drawing.replace(/<([0-9A-F]{4})> Tj\n(.*)<([0-9A-F]{4})> Tj/, '<$3> Tj\n$2<$1> Tj'),
    )
    const { status, stdout } = await prove('a.pdf', changed)
    expect(status).toBe(1)
    expect(stdout).toMatch(
      /1 difference in its text\n {2}page \d+\n {4}stands .+\n {4}gives {2}.+\na\.pdf: NOT what its notebook gives\n$/,
    )
  })

  it('finds a change that is no text: a line drawn elsewhere', async () => {
    const changed = redrawn((await issued()).pdf, drawing =>
      drawing.replace(/(\d+) (\d+) (\d+) (\d+) re\b/, '$1 $2 $4 $3 re'),
    )
    const { status, stdout } = await prove('a.pdf', changed)
    expect(status).toBe(1)
    expect(stdout).toContain('something that is no text was changed')
  })

  it('finds a changed number in the attached results', async () => {
    const { status, stdout } = await prove(
      'a.pdf',
      replaced((await issued()).pdf, '"shown": "22.50"', '"shown": "21.50"'),
    )
    expect(status).toBe(1)
    expect(stdout).toMatch(
      /in its results\n {2}blocks\[1\]\.[\w.[\]]*shown\n {4}stands "21\.50"\n {4}gives {2}"22\.50"/,
    )
  })

  it('finds a changed number in the attached notebook, by what it gives', async () => {
    const { status, stdout } = await prove(
      'a.pdf',
      replaced((await issued()).pdf, 'span: { value: 3 m,', 'span: { value: 2 m,'),
    )
    expect(status).toBe(1)
    expect(stdout).toMatch(/differences in its results/)
    expect(stdout).toMatch(/differences in its text/)
  })

  it('finds the same in the HTML, for the text, the results and the notebook', async () => {
    const text = await prove('a.html', (await issued()).html.replace(/(<td[^>]*>)drawing SP-12/, '$1drawing SP-13'))
    expect([text.status, text.stdout]).toEqual([1, expect.stringContaining('stands drawing SP-13')])
    for (const [mime, from, to] of [
      ['application/json', '"shown": "22.50"', '"shown": "21.50"'],
      ['text/markdown', '3 m', '2 m'],
    ] as const) {
      const changed = (await issued()).html.replace(
        new RegExp(`data:${mime};base64,([A-Za-z0-9+/=]+)`),
        (_, data: string) => {
          const file = Buffer.from(data, 'base64').toString('utf8')
          expect(file).toContain(from)
          return `data:${mime};base64,${Buffer.from(file.replace(from, to)).toString('base64')}`
        },
      )
      expect((await prove('a.html', changed)).status).toBe(1)
    }
  })

  it('says the same as data', async () => {
    const { stdout } = await prove('a.html', (await issued()).html, '--format', 'json')
    expect(JSON.parse(stdout)).toMatchObject({ verdict: 'identical', results: [], text: [], unseen: false })
  })

  it('finds a package of another version of the tool to be the same, whose own name of itself is no difference', async () => {
    const other = folderWith()
    cpSync(dist, other, { recursive: true })
    rmSync(join(other, 'program.code'), { force: true })
    symlinkSync(resolve(dist, '../node_modules'), join(other, 'node_modules'))
    const file = join(other, 'program.cjs')
    const { version } = JSON.parse(readFileSync(resolve(dist, '../package.json'), 'utf8'))
    writeFileSync(file, readFileSync(file, 'latin1').replaceAll(`"${version}"`, '"0.0.9"'), 'latin1')
    const cwd = folderWith({ 'store.md': sound })
    const older = await undercroft(['issue', 'store.md'], { cwd, program: join(other, 'command.js') })
    expect(older.status).toBe(0)
    for (const name of ['store.pdf', 'store.html']) {
      const { status, stdout } = await undercroft(['prove', name], { cwd })
      expect([name, status, stdout]).toEqual([name, 0, expect.stringContaining('issued by undercroft 0.0.9')])
      expect(stdout).not.toContain('difference')
    }
    const html = readFileSync(join(cwd, 'store.html'), 'utf8')
    const { status } = await prove('a.html', html.replace('>22.50<', '>22.60<'))
    expect(status).toBe(1)
  })

  it.each([
    ['since-2020.md', 'since-2020'],
    ['a & "b" <c>.md', 'a & "b" <c>'],
    ['räume – it’s.md', 'räume – it’s'],
    ['x.checked.yaml.md', 'x.checked.yaml'],
  ])('knows the notebook of a package by its name: %s', async (file, name) => {
    const cwd = folderWith({ [file]: sound })
    await undercroft(['issue', file, '--html-only'], { cwd })
    const { status, stdout } = await undercroft(['prove', `${name}.html`], { cwd })
    expect([status, stdout]).toEqual([0, expect.stringContaining(`notebook  ${file}, SHA-256`)])
  })

  it('and where it was read from standard input', async () => {
    const cwd = folderWith()
    await undercroft(['issue', '-', '--html-only'], { cwd, input: sound })
    const { status, stdout } = await undercroft(['prove', '-'], {
      cwd,
      input: readFileSync(join(cwd, 'package.html')),
    })
    expect([status, stdout]).toEqual([0, expect.stringMatching(/\nstandard input: byte for byte/)])
  })

  it('says what a package lacks, and takes no other file for its notebook', async () => {
    const { html } = await issued()
    const without = (name: string): string =>
      html.replace(new RegExp(`<a class="attachment"[^>]*download="${name}">`), '<a>')
    for (const [name, lacks] of [
      ['store.md', 'its notebook'],
      ['results.json', 'its results'],
      ['issue.json', 'how it was issued'],
    ] as const) {
      const { status, stderr } = await prove('a.html', without(name))
      expect([status, stderr]).toEqual([2, expect.stringContaining(`it does not carry ${lacks}\n`)])
    }
    const other = Buffer.from(sound.replace('3 m', '4 m')).toString('base64')
    const link = `<a class="attachment" href="data:text/markdown;base64,${other}" download="0.md">`
    const { stdout } = await prove('a.html', html.replace('<a class="attachment"', `${link}</a><a class="attachment"`))
    expect(stdout).toMatch(/^notebook {2}store\.md,/)
    expect(stdout).toContain('NOT what its notebook gives')
  })

  it('says that a PDF is locked, or cut short', async context => {
    const { pdf } = await issued()
    const cut = await prove('a.pdf', pdf.subarray(0, pdf.length / 3))
    expect([cut.status, cut.stderr]).toEqual([2, expect.stringContaining('perhaps because it is cut short')])
    const cwd = folderWith({ 'a.pdf': pdf })
    try {
      execFileSync('qpdf', ['--encrypt', 'open', 'own', '256', '--', 'a.pdf', 'b.pdf'], { cwd, stdio: 'ignore' })
    } catch {
      return context.skip('there is no qpdf')
    }
    const locked = await undercroft(['prove', 'b.pdf'], { cwd })
    expect([locked.status, locked.stderr]).toEqual([2, expect.stringContaining('it is locked with a password')])
  })

  it.each([
    ['a.pdf', '%PDF-1.7\nnothing'],
    ['a.html', '<p>A page</p>'],
    ['a.md', sound],
  ])('refuses what is no package: %s', async (name, bytes) => {
    const { status, stdout, stderr } = await prove(name, bytes)
    expect([status, stdout]).toEqual([2, ''])
    expect(stderr).toMatch(/is no package that can be proved: /)
  })

  it('proves nothing of the pages where there is no browser, and says so with 4', async () => {
    const { status, stderr } = await prove('a.pdf', (await issued()).pdf, '--browser', '/no/browser')
    expect([status, stderr]).toEqual([4, expect.stringContaining('nothing is proved of them')])
  })
})
