import type { Root } from 'hast'
import { fromHtmlIsomorphic } from 'hast-util-from-html-isomorphic'
import { h } from 'hastscript'
import { beforeAll, describe, expect, it } from 'vitest'
import { assets } from '../../src/sheets/assets.ts'
import { compose } from '../../src/sheets/compose.ts'
import { all, classed, textOf } from '../../src/sheets/pencil/find-elements.ts'
import { pencilProof } from '../../src/sheets/pencil/pencil-proof.ts'
import { blockAt, calc, modelOf } from './skerry-notebook.ts'

const shield = (name: string, cover: string) =>
  calc('halving-layers', name, {
    layers: [
      { layer: 'cover', material: 'packed earth', thickness: cover },
      { layer: 'slab', material: 'concrete', thickness: '300 mm' },
    ],
    required_factor: '50',
    energy: '2 MeV',
  })

/** Skerry Point's roof under earth in three depths: within all limits, past the halving rule's, and past both methods'. */
let screen: string
let page: Root
beforeAll(async () => {
  const model = modelOf({
    blocks: [shield('shallow', '400 mm'), shield('deep', '600 mm'), shield('deepest', '1000 mm')],
    body: { type: 'root', children: [h('h1', 'Roof'), blockAt(0), blockAt(1), blockAt(2)] },
    mentions: [],
    notices: [],
  })
  screen = compose(model, await assets('.')).screen
  page = fromHtmlIsomorphic(screen)
})

const rowsOf = (id: string): string[] =>
  all(page, element => element.properties.id === id).flatMap(part =>
    all(part, element => element.tagName === 'tr').map(textOf),
  )
const doubt = 'satisfied but outside limits'

describe('checks outside the limits of their method', () => {
  it('stand so marked in the summary of checks, those within the limits plainly', () => {
    const rows = rowsOf('checks').filter(row => /shallow|deep/.test(row))
    const verdicts = rows.map(row => [
      /shallow|deepest|deep/.exec(row)?.[0],
      row.includes('second'),
      row.endsWith(doubt),
    ])
    expect(verdicts.sort()).toEqual([
      ['deep', false, true],
      ['deep', true, false],
      ['deepest', false, true],
      ['deepest', true, true],
      ['shallow', false, false],
    ])
    for (const row of rows) expect(row).toMatch(/satisfied/)
    const noted = all(page, element => classed(element, 'doubts')).map(textOf)
    expect(noted).toEqual([expect.stringMatching(/a limit of the method is exceeded .*: (\d\.\d\d, ){2}\d\.\d\d\.$/)])
  })

  it('are counted apart on the cover, by their numbers, and call for a look', () => {
    const row = rowsOf('cover').find(text => text.includes('Checks')) ?? ''
    const numbers = all(page, element => classed(element, 'step')).flatMap(step =>
      textOf(step).includes(doubt) ? [String(step.properties.dataLine)] : [],
    )
    expect(numbers).toHaveLength(3)
    expect(row).toContain(`2 of 5 satisfied; 3 satisfied but outside limits: ${numbers.join(', ')}`)
    expect(row).not.toContain('all 5')
    const bold = all(page, element => element.tagName === 'tr' && textOf(element).startsWith('Checks'))
    expect(bold.some(each => all(each, element => element.tagName === 'b').length > 0)).toBe(true)
  })

  it('have their limits named on the cover and in the table of limits', () => {
    expect(rowsOf('cover').find(text => text.includes('Limits of validity'))).toMatch(/exceeded in 2 deep, 3 deepest/)
    const limits = all(page, element => classed(element, 'limits')).map(textOf)
    expect(limits[0]).not.toContain('exceeded')
    expect(limits[2]).toMatch(/exceeded: second method: the stack is 1 to 10 mean free paths deep/)
  })

  it('close with the pencil, a second method’s check like any other', () => {
    const whole = pencilProof(screen)
    expect(whole.closing).toBe(whole.lines)
    const start = screen.indexOf('b-deep-check', screen.indexOf('Second method: '))
    expect(start).toBeGreaterThan(0)
    const spoilt = screen.slice(0, start) + screen.slice(start).replace('<b>satisfied</b>', '<b>not satisfied</b>')
    expect(pencilProof(spoilt).closing).toBe(whole.closing - 1)
  })
})
