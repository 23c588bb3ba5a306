import { toHtml } from 'hast-util-to-html'
import { describe, expect, it } from 'vitest'
import type { FormulaLine } from '../../src/evaluation/workings.ts'
import { pencilProof } from '../../src/sheets/pencil/pencil-proof.ts'
import { settingOf } from '../../src/typesetting/setting.ts'
import { workingHtml } from '../../src/typesetting/working-html.ts'
import { faultsOf, numbersIn } from './recompute.ts'
import { fence, runText } from './run-text.ts'

const run = (temperature: string, units: 'SI' | 'US' = 'SI') =>
  runText(
    fence('assume site', `T_a: ${temperature}`) + fence('work hot', 'T_k = (site.T_a / degC + 273.15) * K to K'),
    {
      units,
    },
  )
const line = (temperature: string, units?: 'SI' | 'US') => run(temperature, units).line('hot', 'T_k') as FormulaLine

describe('a temperature read on a scale', () => {
  it('prints its own number, and the sum of an engineer behind it', () => {
    const { working, result } = line('18 degC')
    expect(working.bare).toBe(true)
    expect(numbersIn(working)).toBe('18 + 273.15')
    expect([result.digits, result.unit.text]).toEqual(['291.2', 'K'])
  })

  it('is carried over by hand from the scale it is shown in (SP 811 B.8: t/degF = 1.8 t/degC + 32)', () => {
    const { working, result } = line('68 degF', 'US')
    expect(numbersIn(working)).toBe('(68 - 32) / 1.8 + 273.15')
    expect(result.digits).toBe('293.2')
    const back = runText(fence('assume site', 'T_a: 20 degC') + fence('work hot', 'n = site.T_a / degF'))
    const reading = back.line('hot', 'n') as FormulaLine
    expect(numbersIn(reading.working)).toBe('1.8 × 20 + 32')
    expect(reading.result.digits).toBe('68.00')
  })

  it.each([
    ['18 degC', 'SI'],
    ['68 degF', 'US'],
    ['-40 degF', 'US'],
    ['77.77 degF', 'SI'],
  ] as const)('closes by the pencil: %s in %s units', (temperature, units) => {
    const ran = run(temperature, units)
    expect(faultsOf(line(temperature, units))).toEqual([])
    const block = ran.block('hot')
    if (!block) throw new Error('no block')
    const setting = settingOf(ran.workings, { medium: 'screen' })
    const page = toHtml(workingHtml(block, 2, setting), { allowDangerousHtml: true })
    expect(pencilProof(page)).toEqual({ lines: 1, closing: 1, failing: [], notPencil: 0 })
  })
})
