import { describe, expect, it } from 'vitest'
import { bodyOf, marked, onlyFault, textAt, titleOf } from './reading-of.ts'

const block = '```work roof\nM_s = 1 kN\n```\n\n'

describe('mentions: what is read', () => {
  it('a value with its unit and figures, each at its place', () => {
    const notebook = bodyOf('The moment is :value[roof.M_support]{unit="kip*ft/ft" figures=3} there.\n')
    const [mention] = notebook.mentions
    expect(notebook.diagnostics).toEqual([])
    expect(mention).toMatchObject({
      kind: 'value',
      name: { text: 'roof.M_support' },
      unit: { text: 'kip*ft/ft' },
      figures: 3,
    })
    if (mention?.kind !== 'value') throw new Error('expected a value')
    expect(textAt(notebook, mention.place)).toBe(':value[roof.M_support]{unit="kip*ft/ft" figures=3}')
    expect(textAt(notebook, mention.name.place)).toBe('roof.M_support')
    expect(mention.unit && textAt(notebook, mention.unit.place)).toBe('kip*ft/ft')
  })
  it.each([
    ":value[a.b]{unit='kN'}",
    ':value[a.b]{unit=kN}',
    ':value[a.b]{ figures=3 }',
    ':value[a.φ_1]',
    ':value[ a.b ]',
    ':value[\na.b]',
    ':see[roof]',
    ':cite[nist-5632]',
    ':cite[IS456:2000]',
    '**:value[a.b]**',
    '[:value[a.b]](x.md)',
    '# :value[a.b]',
    '- :value[a.b]',
    '> :value[a.b]',
    '| a |\n| - |\n| :value[a.b] |',
    'x[^1]\n\n[^1]: :value[a.b]',
    '(:value[a.b])',
    ':value[a.b].',
    'x:value[a.b]',
  ])('%j is a mention', text => {
    const notebook = bodyOf(`${text}\n`)
    expect([notebook.diagnostics, notebook.mentions.length]).toEqual([[], 1])
    expect(textAt(notebook, notebook.mentions[0]!.name.place)).toBe(notebook.mentions[0]!.name.text)
  })
  it.each([
    '`:value[a.b]`',
    '$:value[a.b]$',
    '\\:value[a.b]',
    'ratio:value',
    ':value',
    ':value of',
    ':see',
    '```\n:value[a.b]\n```',
    '<!-- :value[a.b] -->',
    '::valued[a.b]',
  ])('%j is none, and no fault', text => {
    const { mentions, diagnostics } = bodyOf(`${text}\n`)
    expect([mentions, diagnostics]).toEqual([[], []])
  })
  it('their nodes know them by number, in the order of the text', () => {
    const { tree, mentions } = bodyOf(':see[b] and :see[a]\n')
    expect(mentions.map(({ name }) => name.text)).toEqual(['b', 'a'])
    const paragraph = tree.children[1]
    if (paragraph?.type !== 'paragraph') throw new Error('expected a paragraph')
    expect(paragraph.children.map(({ data }) => data?.undercroft)).toEqual([
      { kind: 'mention', index: 0 },
      undefined,
      { kind: 'mention', index: 1 },
    ])
  })
})

describe('mentions: what is refused', () => {
  it.each([
    [':value[]', ':value[]'],
    [':value[roof]', 'roof'],
    [':value[roof M]', 'roof M'],
    [':value[Roof.M]', 'Roof.M'],
    [':value[a.b.c]', 'a.b.c'],
    [':value[a.[b]]', 'a.[b]'],
    [':value[:see[a]]', ':see[a]'],
    [':value[a.b', ':value'],
    [':value{unit=kN}', ':value{unit=kN}'],
    [':value[a.b]{unti=kN}', 'unti=kN'],
    [':value[a.b]{unit}', 'unit'],
    [':value[a.b]{unit=kN unit=N}', 'unit=N'],
    [':value[a.b]{figures=0}', '0'],
    [':value[a.b]{figures=11}', '11'],
    [':value[a.b]{figures=x}', 'x'],
    [':value[a.b]{#id}', '#id'],
    [':value[a.b]{unit="kN}', 'a.b'],
    [':see[Roof]', 'Roof'],
    [':see[roof]{unit=kN}', 'unit=kN'],
    [':cite[a, b]', 'a, b'],
    [':value[a.\nb]', 'a.'],
  ])('%j', (text, at) => {
    const notebook = bodyOf(`Look: ${text}\n`)
    const fault = onlyFault(notebook)
    expect(fault).toMatchObject({ rule: 'mention-form', severity: 'error' })
    expect(textAt(notebook, fault.place)).toBe(at)
    expect(notebook.mentions).toEqual([])
  })
  it('one that cannot be read stays in the text as typed', () => {
    const { tree } = bodyOf('Look: :value[roof] here\n')
    const paragraph = tree.children[1]
    if (paragraph?.type !== 'paragraph') throw new Error('expected a paragraph')
    expect(paragraph.children.map(node => node.type === 'text' && node.value).join('')).toBe('Look: :value[roof] here')
  })
  it('a block alone offers both ways out', () => {
    expect(onlyFault(bodyOf(':value[roof]\n')).help).toBe('Write `:value[roof.NAME]`, or `:see[roof]` for a block')
  })
  it.each([
    ':values[roof.M_s]',
    ':Value[roof.M_s]',
    ':vlaue[roof.M_s]',
    '::value[roof.M_s]',
    ':sea[roof]',
    ':See[roof]',
  ])('%s is nearly a mention where the notebook has the block', text => {
    const notebook = bodyOf(`${block}It is ${text} there.\n`)
    const fault = onlyFault(notebook)
    expect(fault.rule).toBe('mention-form')
    expect(textAt(notebook, fault.place)).toBe(text)
  })
  it('the same without such a block is somebody else’s text', () => {
    expect(bodyOf(`${block}It is :values[wall.M_s] and :icon[home].\n`).diagnostics).toEqual([])
  })
  it('a slip in `cite` is seen by the key of a reference', () => {
    const notebook = titleOf('references: { bh2: log }\n---\n\nSee :cit[bh2].')
    expect(marked(notebook)).toEqual(['mention-form: :cit[bh2]'])
  })
})
