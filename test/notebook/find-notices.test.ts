import { describe, expect, it } from 'vitest'
import { bodyOf, marked, onlyFault, textAt } from './reading-of.ts'

describe('boxes: what is read', () => {
  it('cautions and holds, with their plain text', () => {
    const notebook = bodyOf(
      ':::caution\nKeep *dry*: `pump` below :value[site.z_w].\n\n- one\n- two\n:::\n\n> :::hold\n> BH3\n> :::\n',
    )
    expect(notebook.diagnostics).toEqual([])
    expect(notebook.notices).toMatchObject([
      { kind: 'caution', text: 'Keep dry: pump below :value[site.z_w]. one two', place: { line: 5, column: 1 } },
      { kind: 'hold', text: 'BH3', place: { line: 12, column: 3 } },
    ])
    expect(notebook.tree.children[1]?.data?.undercroft).toEqual({ kind: 'notice', index: 0 })
  })
  it('one in another, with more colons outside', () => {
    const notebook = bodyOf('::::caution\na\n\n:::hold\nb\n:::\n::::\n')
    expect(notebook.diagnostics).toEqual([])
    expect(notebook.notices.map(({ kind, text }) => [kind, text])).toEqual([
      ['caution', 'a b'],
      ['hold', 'b'],
    ])
  })
  it.each([
    ':::note\nx\n:::',
    ':::mood\nx\n:::',
    ':::note\n:::tip\nx\n:::\n:::',
    '::: note\nx\n:::',
    '::leaf',
    '::leaf[x]{y}',
    '`:::`',
    ':: x',
  ])("%j is somebody else's", text => {
    const { notices, diagnostics } = bodyOf(`${text}\n`)
    expect([notices, diagnostics]).toEqual([[], []])
  })
})

describe('boxes: what is refused', () => {
  it.each([
    [':::', 'container-stray: :::'],
    ['x\n:::\ny', 'container-stray: :::'],
    ['> :::', 'container-stray: :::'],
    [':::caution\na', 'fence-unclosed: :::caution'],
    ['> :::hold\n> a\n\nb', 'fence-unclosed: :::hold'],
    ['::::caution\na\n:::', 'fence-unclosed: ::::caution'],
    [':::caution\n:::', 'notice-form: :::caution'],
    [':::caution{#a}\nb\n:::', 'notice-form: :::caution{#a}'],
    ['::: caution\na\n:::', 'notice-form: ::: caution'],
    [':::cautoin\na\n:::', 'notice-form: :::cautoin'],
    [':::Hold\na\n:::', 'notice-form: :::Hold'],
    [':::hold the pump\na\n:::', 'notice-form: :::hold the pump'],
    [':::caution[a\nb\n:::', 'notice-form: :::caution[a'],
    ['::hold\na', 'notice-form: ::hold'],
    ['> ::: hold\n> a\n> :::', 'notice-form: ::: hold'],
  ])('%j', (text, said) => {
    expect(marked(bodyOf(`${text}\n`))).toEqual([said])
  })
  it('a box in a box of as many colons: said once, at the inner one', () => {
    const notebook = bodyOf(':::caution\na\n\n:::hold\nb\n:::\n:::\n')
    const fault = onlyFault(notebook)
    expect([fault.rule, textAt(notebook, fault.place)]).toEqual(['fence-unclosed', ':::hold'])
    expect(fault.help).toContain('more colons')
  })
})
