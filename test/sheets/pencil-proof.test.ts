import { toHtml } from 'hast-util-to-html'
import katex from 'katex'
import { beforeAll, describe, expect, it } from 'vitest'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { makeWorkings } from '../../src/evaluation/make-workings.ts'
import { plan } from '../../src/evaluation/plan.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'
import { assets } from '../../src/sheets/assets.ts'
import { compose } from '../../src/sheets/compose.ts'
import { type PencilProof, pencilProof } from '../../src/sheets/pencil/pencil-proof.ts'
import { settingOf } from '../../src/typesetting/setting.ts'
import { workingHtml } from '../../src/typesetting/working-html.ts'
import { smallPackage } from './small-package.ts'

let screen: string
let whole: PencilProof
beforeAll(async () => {
  screen = compose(smallPackage(), await assets('.')).screen
  whole = pencilProof(screen)
})

/** The number of the step with this anchor, or of the check with this number. */
const numberOf = (anchor: string): string =>
  new RegExp(`id="${anchor}" class="step[^"]*" data-line="([^"]*)"`).exec(screen)?.[1] ?? anchor

/** The step with this number, with its printed characters changed. */
function spoil(number: string, from: string | RegExp, to: string): string {
  const start = screen.indexOf(`data-line="${number}"`)
  const end = screen.indexOf('data-line=', start + 10)
  const step = screen.slice(start, end)
  const spoilt = step.replace(from, to)
  expect(spoilt === step).toBe(false)
  return screen.slice(0, start) + spoilt + screen.slice(end)
}

describe('pencil proof: a package', () => {
  it('every printed line closes', () => {
    expect(whole.failing).toEqual([])
    expect(whole.lines).toBeGreaterThan(60)
    expect(whole.closing).toBe(whole.lines)
    expect(whole.notPencil).toBe(2)
  })
  it.each([
    ['a result', 'v-roof-M_x_mid', '33.68', '33.86'],
    ['an operand', 'v-roof-M_x_mid', '<mn href="#v-roof-load">57</mn>', '<mn>58</mn>'],
    ['a table entry', 'v-roof-alpha_y_mid', '>0.035<', '>0.036<'],
    ['a corner of an interpolation', 'v-roof-alpha_x_mid', /<mn>0\.053<\/mn>/, '<mn>0.054</mn>'],
    ['a verdict', '3.03', 'not satisfied', 'satisfied'],
    ['a ratio', '3.03', /<span class="ratio">1\.12</, '<span class="ratio">1.14<'],
  ])('%s changed: one line fewer closes', (_, anchor, from, to) => {
    const number = numberOf(anchor)
    const spoilt = pencilProof(spoil(number, from, to))
    expect(spoilt.lines).toBe(whole.lines)
    expect(spoilt.closing).toBe(whole.closing - 1)
    expect(spoilt.failing.map(line => line.number)).toEqual([number])
  })
  it('the glyphs and the TeX are not what is read', () => {
    const start = screen.indexOf(`data-line="${numberOf('v-roof-M_x_mid')}"`)
    const annotated = screen.slice(0, start) + screen.slice(start).replace(/(<annotation[^>]*>[^<]*)33\.68/, '$133.99')
    expect(pencilProof(annotated).closing).toBe(whole.closing)
  })
})

/** A page of one line, as formulas of the package are set. */
function line(put: string, result: string, more = ''): PencilProof {
  const math = (tex: string): string => katex.renderToString(tex, { output: 'mathml', strict: 'error' })
  const parts = `<span class="put">${math(`= ${put}`)}</span> <span class="result">${math(`= ${result}`)}</span>`
  return pencilProof(`<div data-line="1.01" data-kind="formula"><div class="equation">${parts}</div>${more}</div>`)
}

describe('pencil proof: one line', () => {
  it.each([
    ['bare numbers', '0.5 \\times 19.5 \\times 3.5^{2}', '\\mathbf{119.4}\\;{\\mathrm{kN}/\\mathrm{m}}'],
    [
      'units that convert',
      '{300\\;{\\mathrm{mm}}} \\times {2.5\\;{\\mathrm{m}}}',
      '\\mathbf{0.75}\\;{\\mathrm{m}^{2}}',
    ],
    ['a fraction and a root', '\\sqrt{\\frac{2 \\times 9}{4}}', '\\mathbf{2.121}'],
    ['thousands under a root', '\\sqrt{10\\,000}', '\\mathbf{100}'],
    ['a cube root', '\\sqrt[3]{27}', '\\mathbf{3}'],
    ['degrees', '\\sin(30{}^{\\circ})', '\\mathbf{0.5}'],
    ['an angle as result', '\\arctan(0.5)', '\\mathbf{26.57}{{}^{\\circ}}'],
    ['e to a power', '18.25 \\times e^{-9.1416}', '\\mathbf{0.001955}'],
    ['thousands and powers of ten', '12\\,500 \\times {1.2 \\times 10^{-6}}', '\\mathbf{0.015}'],
    ['a negative result', '3 - 5.25', '\\mathbf{-2.25}'],
    ['a power of ten as result', '3.8 \\times 1000000', '\\mathbf{{3.800 \\times 10^{6}}}'],
    ['least of three', '\\min(3,\\ \\allowbreak 2,\\ \\allowbreak 5)', '\\mathbf{2}'],
    [
      'nought without a unit among lengths',
      '\\max(0,\\ \\allowbreak {12\\;{\\mathrm{m}}} - {300\\;{\\mathrm{mm}}})',
      '\\mathbf{11.7}\\;{\\mathrm{m}}',
    ],
    ['natural and common logarithm', '\\ln(10) + \\log_{10}(1000)', '\\mathbf{5.303}'],
    ['per cent', '\\frac{754}{204000}', '\\mathbf{0.3696}\\;{\\%}'],
    [
      'a temperature on a scale',
      '{12\\;{{}^{\\circ}\\mathrm{C}}} + {5\\;{\\mathrm{K}}}',
      '\\mathbf{17}\\;{{}^{\\circ}\\mathrm{C}}',
    ],
    ['floor and absolute value', '\\left\\lfloor 2.7 \\right\\rfloor + \\left| -3 \\right|', '\\mathbf{5}'],
    ['a square of brackets', '\\left(\\sqrt{4} + 1\\right)^{2}', '\\mathbf{9}'],
    ['a double minus', '2 - (-3)', '\\mathbf{5}'],
    [
      'minutes below a line',
      '{1\\;{\\mathrm{ft}^{3}/\\mathrm{min}}} \\times {2\\;{\\mathrm{min}}}',
      '\\mathbf{2}\\;{\\mathrm{ft}^{3}}',
    ],
  ])('%s closes', (_, put, result) => {
    expect(line(put, result)).toEqual({ lines: 1, closing: 1, failing: [], notPencil: 0 })
  })
  it('one unit in the last figure is allowed, two are not', () => {
    expect(line('1.0 \\times 2.344', '\\mathbf{2.345}').closing).toBe(1)
    expect(line('1.0 \\times 2.343', '\\mathbf{2.345}').closing).toBe(0)
  })
  it('a result in another unit does not close', () => {
    expect(line('{3\\;{\\mathrm{m}}}', '\\mathbf{3}\\;{\\mathrm{kN}}').failing[0]?.recomputed).toBe('another unit')
  })
  it('nought goes with every unit, no other bare number does', () => {
    const put = (first: string) => `\\max(${first},\\ \\allowbreak {12\\;{\\mathrm{m}}})`
    expect(line(put('0'), '\\mathbf{12}\\;{\\mathrm{m}}').closing).toBe(1)
    expect(line(put('1'), '\\mathbf{12}\\;{\\mathrm{m}}').failing[0]?.recomputed).toContain('units that do not fit')
    expect(line(put('0'), '\\mathbf{12}\\;{\\mathrm{kN}}').failing[0]?.recomputed).toBe('another unit')
  })
  it('closing noughts of a long whole number are place holders, of a short one figures', () => {
    expect(line('1250.3 \\times 10', '\\mathbf{12\\,500}').closing).toBe(1)
    expect(line('103', '\\mathbf{100}').closing).toBe(0)
  })
  it('what cannot be read counts as failing, in words', () => {
    const proof = line('\\operatorname{mystery}(3)', '\\mathbf{3}')
    expect(proof.closing).toBe(0)
    expect(proof.failing[0]?.recomputed).toContain('not read')
  })
})

describe('pencil proof: a difference of nearly equal numbers', () => {
  const text = '```work t\na = sqrt(2) * 1e12\nb = sqrt(2) * 1e12 + 123456.7\nc = b - a\n```\n'
  const workings = makeWorkings(evaluate(plan(readNotebook(text, { path: 'nearly.md' }), [])))
  const [block] = workings.blocks
  const page = block
    ? toHtml(workingHtml(block, 2, settingOf(workings, { medium: 'screen' })), { allowDangerousHtml: true })
    : ''

  it('closes where the line says on the page that it shows fewer figures', () => {
    expect(page).toContain('<p class="note fewer">Fewer figures')
    expect(pencilProof(page)).toEqual({ lines: 3, closing: 3, failing: [], notPencil: 0 })
  })
  it('does not close where it says nothing', () => {
    const silent = pencilProof(page.replace('class="note fewer"', 'class="note"'))
    expect(silent.failing).toMatchObject([{ number: '1.03', recomputed: '124000' }])
  })
})
