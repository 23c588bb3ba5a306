import { describe, expect, it } from 'vitest'
import { moduleSymbols } from '../../src/evaluation/module-symbols.ts'
import { isSymbolic } from '../../src/formula/symbol.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import type { Module } from '../../src/modules/module.ts'
import { typesetWritten } from '../../src/typesetting/typeset-written.ts'

/** Keys whose text is a sentence; those that follow are for the author alone and may name inputs and words as they are typed. */
const printed = new Set(['says', 'title', 'asks', 'source', 'status', 'otherwise', 'titles'])
const forAuthors = new Set(['note', 'advice'])

interface Sentence {
  readonly text: string
  readonly isPrinted: boolean
}

/** Every sentence of a module, wherever it stands. */
function sentencesOf(value: unknown, key = ''): Sentence[] {
  if (typeof value === 'string')
    return printed.has(key) || forAuthors.has(key) ? [{ text: value, isPrinted: printed.has(key) }] : []
  if (Array.isArray(value)) return value.flatMap(each => sentencesOf(each, key === 'cautions' ? 'says' : key))
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([name, part]) =>
    key === 'words' && typeof part === 'string' ? [{ text: part, isPrinted: false }] : sentencesOf(part, name),
  )
}

const outside = (text: string): string => text.replace(/`[^`]*`/g, '`')

/** What no English sentence holds: joined words, powers, stars, a letter with a number as its value. */
const raw = [/\w_\w/, /\^/, /\w ?\*+ ?\w/, /(?:^|[ (])[B-Zb-z] \d/]

/** Names of the module that are symbols and no words. */
const symbolsOf = (module: Module): string[] =>
  [...moduleSymbols(module)].flat().filter(name => name.length > 1 && isSymbolic(name))

describe.each(catalogue.map(module => [module.id, module] as const))('%s', (_, module) => {
  const sentences = sentencesOf(module)
  const symbols = moduleSymbols(module)

  it('has its sentences found', () => {
    expect(sentences.length).toBeGreaterThan(20)
    for (const caution of module.cautions) {
      const text = typeof caution === 'string' ? caution : caution.says
      expect(sentences.map(sentence => sentence.text)).toContain(text)
    }
  })

  it('has no raw symbol, formula or unit in a sentence: they stand in backticks', () => {
    const names = symbolsOf(module)
    for (const { text } of sentences) {
      for (const pattern of raw) expect(outside(text), text).not.toMatch(pattern)
      expect(
        outside(text)
          .split(/[^\w']+/)
          .filter(word => names.includes(word)),
        text,
      ).toEqual([])
    }
  })

  it('has backticks in pairs, and in print only what can be set', () => {
    for (const { text, isPrinted } of sentences) {
      const pieces = text.split('`')
      expect(pieces.length % 2, text).toBe(1)
      if (!isPrinted) continue
      for (const written of pieces.filter((_piece, index) => index % 2 === 1))
        expect(typesetWritten(written, symbols), `${written} in: ${text}`).toBeDefined()
    }
  })
})

describe('a raw symbol', () => {
  it.each(['load `w_u`, not w_qp', 'f_ck b d^2', 'at 25 kN/m^3', '1.4 * D', 'b 1000 mm', 'd 150 mm'])(
    'is found in: %s',
    text => {
      expect(raw.some(pattern => pattern.test(outside(text)))).toBe(true)
    },
  )

  it.each([
    'type B: clay',
    '1.4 D and 1.6 L',
    'at 273 K and 101 kPa',
    'a 45 degree line',
    'use `w_qp` here',
    'Table B-1',
  ])('is none: %s', text => {
    expect(raw.some(pattern => pattern.test(outside(text)))).toBe(false)
  })
})
