import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import { describe, expect, it } from 'vitest'
import { plainProse, prose, sentenceCase } from '../../src/typesetting/prose.ts'
import { type Setting, settingIn, settingOf } from '../../src/typesetting/setting.ts'
import { typesetWritten } from '../../src/typesetting/typeset-written.ts'
import { runText } from '../evaluation/run-text.ts'

const symbols = new Map([
  ['moment', 'M_u'],
  ['cover_required', 't_req'],
  ['x_max', 'x_u,max'],
  ['h_arm', 'K'],
])
const tex = (text: string) => typesetWritten(text, symbols)?.tex

describe('what stands in backticks', () => {
  it('is the symbol of a name of the module', () => {
    expect(tex('cover_required')).toBe('t_{\\mathrm{req}}')
    expect(typesetWritten('moment', symbols)?.spoken).toBe('M u')
  })

  it('is a unit, upright and with a dot between its parts', () => {
    expect(tex('kN*m/m')).toContain('\\mathrm{kN}\\,{\\cdot}\\,\\mathrm{m}')
    expect(typesetWritten('kN/m^2', symbols)?.spoken).toBe('kilonewtons per square metre')
  })

  it('is a symbol before it is a unit, where the module has it', () => {
    expect(tex('K')).toBe('K')
    expect(typesetWritten('K')?.spoken).toBe('kelvin')
  })

  it('is a symbol as it is written, and a formula with symbols for its names', () => {
    expect(tex("gamma'")).toBe("\\gamma'")
    expect(tex('f_ck * b * x_max^2')).toBe('f_{\\mathrm{ck}} \\cdot b \\cdot x_{u,\\mathrm{max}}^{2}')
    expect(tex('psi_0 = 0.7')).toBeUndefined()
    expect(tex('moment <= 20 kN*m')).toContain('M_{u} \\le {20')
  })

  it('stays as typed where it is a word, a file or a name of another block', () => {
    for (const text of ['chosen factor', 'sheet', 'npm test', 'roof.w_u', '', 'water_depth'])
      expect(tex(text), text).toBeUndefined()
  })
})

describe('a sentence', () => {
  const { workings } = runText('')
  const setting: Setting = settingIn(settingOf(workings, { medium: 'screen' }), { symbols })
  const html = (text: string, how = setting) => toHtml(h('p', prose(text, how)), { allowDangerousHtml: true })

  it('has its symbols with MathML beside them on the screen, and spoken in print', () => {
    expect(html('no less than `moment`')).toMatch(/^<p>no less than <span class="katex"><span class="katex-mathml">/)
    expect(html('no less than `moment`', { ...setting, medium: 'print' })).toContain('role="img" aria-label="M u"')
  })

  it('keeps other words in backticks as they are typed, and has none where nothing can be set', () => {
    expect(html('give `chosen factor`')).toBe('<p>give <code>chosen factor</code></p>')
    expect(plainProse('use `w_u` here')).toBe('use w_u here')
  })

  it('begins with a capital, an article too, and leaves a symbol as it is', () => {
    expect(sentenceCase('stay without end')).toBe('Stay without end')
    expect(sentenceCase('a stay without end')).toBe('A stay without end')
    for (const text of ['b of the leaf', 'f_c at 28 days', 'a', 'a > b', 'β of the table'])
      expect(sentenceCase(text)).toBe(text)
  })
})
