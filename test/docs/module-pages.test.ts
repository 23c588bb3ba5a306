import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { modulePage } from '../../src/command/module-page.ts'
import { catalogue, modulesByWing, wingOrder } from '../../src/modules/catalogue.ts'
import { type Wing, wings } from '../../src/modules/ledger.ts'
import { runModule } from '../modules/run-module.ts'

const folder = new URL('../../docs/modules/', import.meta.url)
const pages = new Map(catalogue.map(module => [`${module.id}.md`, modulePage(module)]))
const wingTable = (wing: Wing): string => `## ${wings[wing]}

| module | asks |
| --- | --- |
${modulesByWing[wing].map(module => `| [${module.id}](${module.id}.md) | ${module.asks} |`).join('\n')}
`
const index = `# Modules

Generated from the code: \`UPDATE_DOCS=1 npx vitest run test/docs\` writes these pages, and a test fails where they part from it.
The symbols of all modules stand in the [nomenclature](../nomenclature.md).

${wingOrder.map(wingTable).join('\n')}`
pages.set('README.md', index)

if (process.env.UPDATE_DOCS) {
  mkdirSync(folder, { recursive: true })
  for (const [name, text] of pages) writeFileSync(new URL(name, folder), text)
}

describe('docs/modules', () => {
  it('has a page for each module and no other', () => {
    expect(readdirSync(folder).sort()).toEqual([...pages.keys()].sort())
  })
  for (const [name, text] of pages) {
    it(`${name}: equals what the code says`, () => {
      expect(readFileSync(new URL(name, folder), 'utf8')).toBe(text)
    })
  }
  for (const module of catalogue) {
    it(`${module.id}: the block to paste evaluates`, () => {
      const ran = runModule(module, module.example)
      expect(ran.errors).toEqual([])
      for (const name of module.results) expect(ran.has(name), name).toBe(true)
    })
  }
})
