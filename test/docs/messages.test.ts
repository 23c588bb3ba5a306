import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { messageIndex, messagePage } from '../../src/diagnostic/messages/message-page.ts'
import { messages } from '../../src/diagnostic/messages/messages.ts'
import { type Rule, rules } from '../../src/diagnostic/rules.ts'
import { type RunExample, runExample } from './run-example.ts'

const folder = fileURLToPath(new URL('../../docs/messages/', import.meta.url))
const names = Object.keys(rules) as Rule[]
const update = process.env.UPDATE_DOCS === '1'

/** The example of a rule, run; nothing where it has none. */
function heard(rule: Rule, run: RunExample) {
  const { example, saved } = messages[rule]
  return example === undefined
    ? undefined
    : run(saved === 'Latin-1' ? Buffer.from(example, 'latin1') : Buffer.from(example))
}

const pages = (): ReadonlyMap<string, string> =>
  new Map([
    ['README.md', messageIndex()],
    ...names.map(rule => [`${rule}.md`, messagePage(rule, heard(rule, runExample))] as const),
  ])

describe('messages: examples', () => {
  it.each(names.filter(rule => messages[rule].example !== undefined))(
    '%s is what its example gives, and no other error',
    rule => {
      const said = heard(rule, runExample)?.diagnostics ?? []
      expect(said.map(each => each.rule)).toContain(rule)
      const others = said.filter(each => each.rule !== rule && each.severity === 'error')
      expect(others.map(each => each.rule)).toEqual([])
    },
  )
  it.each(names)('%s: an example, or the reason why there is none', rule => {
    const { example, noExample } = messages[rule]
    expect((example === undefined) !== (noExample === undefined)).toBe(true)
  })
  it.each(names)('%s: sentences end, and say more than the rule', rule => {
    const { means, instead } = messages[rule]
    expect(means.length).toBeGreaterThan(rules[rule].length)
    expect(means).toMatch(/\.$/)
    expect(instead).toMatch(/(?:\.|```)$/)
  })
})

describe('messages: pages', () => {
  if (update) {
    rmSync(folder, { recursive: true, force: true })
    mkdirSync(folder, { recursive: true })
    for (const [name, page] of pages()) writeFileSync(`${folder}${name}`, page)
  }
  it('there is one page for each rule, and the list', () => {
    expect(readdirSync(folder).sort()).toEqual([...pages().keys()].sort())
  })
  it.each([...pages()])('%s is what the code says (UPDATE_DOCS=1 writes it)', (name, page) => {
    expect(readFileSync(`${folder}${name}`, 'utf8')).toBe(page)
  })
})
