import { describe, expect, it } from 'vitest'
import { all, classed, textOf } from '../../src/sheets/pencil/find-elements.ts'
import { runningSymbol } from '../../src/typesetting/running-line.ts'
import { settingOf } from '../../src/typesetting/setting.ts'
import { workingHtml } from '../../src/typesetting/working-html.ts'
import { smallPackage } from '../sheets/small-package.ts'

describe('running-symbol', () => {
  it.each([
    [['q_1', 'q_2', 'q_3'], [1, 2, 3], 'q_i'],
    [['z_1', 'z_2'], [2, 3], 'z_i-1'],
    [['gamma_f', 'gamma_f'], [1, 2], 'gamma_f'],
    [["sigma'_v_1", "sigma'_v_2"], [1, 2], "sigma'_v_i"],
  ] as const)('%j of rows %j', (symbols, rows, expected) => {
    expect(runningSymbol(symbols, rows)).toBe(expected)
  })
  it('nothing for what is not one symbol of rows', () => {
    expect(runningSymbol(['a_1', 'b_2'], [1, 2])).toBeUndefined()
    expect(runningSymbol(['a_1', 'a_3'], [1, 2])).toBeUndefined()
    expect(runningSymbol(['a_1'], [1, 2])).toBeUndefined()
  })
})

describe('shared-lines', () => {
  const { workings } = smallPackage()
  const cover = workings.blocks.find(block => block.name === 'cover')
  if (cover?.kind !== 'calc') throw new Error('no cover')
  const page = workingHtml(cover, 3, settingOf(workings, { medium: 'screen' }))
  const [shared] = all(page, element => classed(element, 'shared'))
  if (!shared) throw new Error('no step over rows')
  it('words and reference stand once, over the rows', () => {
    const [head] = all(shared, element => classed(element, 'shared-head'))
    expect(head && textOf(head)).toContain('4.01Weight of the layer')
    expect(textOf(shared).match(/Weight of the layer/g)).toHaveLength(1)
  })
  it('each row has its number, label, box and anchor', () => {
    const rows = all(shared, element => classed(element, 'step'))
    expect(rows.map(row => row.properties.dataLine)).toEqual(['4.01a', '4.01b', '4.01c'])
    expect(rows.map(row => row.properties.id)).toEqual(['v-cover-g_layer_1', 'v-cover-g_layer_2', 'v-cover-g_layer_3'])
    for (const row of rows) expect(all(row, element => classed(element, 'put'))).toHaveLength(1)
    expect(rows.map(textOf)[1]).toContain('2 drainage gravel')
  })
})
