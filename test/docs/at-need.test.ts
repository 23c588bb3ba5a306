import { readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { atNeed } from '../../src/modules/at-need.ts'
import { catalogue, modulesByWing, wingOrder } from '../../src/modules/catalogue.ts'
import type { Wing } from '../../src/modules/ledger.ts'
import type { Module } from '../../src/modules/module.ts'
import { modulesNamed } from '../../src/modules/modules-named.ts'

const file = new URL('../../src/modules/at-need.ts', import.meta.url)

/** The line that reads a module at need, from the file that is named after it. */
async function lineOf(wing: Wing, module: Module): Promise<string> {
  const { id } = module
  const exported = Object.entries(await import(`../../src/modules/${wing}/${id}.ts`))
  const name = exported.find(([, value]) => value === module)?.[0]
  const key = /-/.test(id) ? `'${id}'` : id
  return `  ${key}: async () => (await import('./${wing}/${id}.ts')).${name},\n`
}

describe('src/modules/at-need.ts', () => {
  it('has a line for each module of the catalogue', async () => {
    const lines = wingOrder.flatMap(wing => modulesByWing[wing].map(module => lineOf(wing, module)))
    const before = readFileSync(file, 'utf8')
    const text = before.replace(/\{\n.*\}\n$/s, `{\n${(await Promise.all(lines)).join('')}}\n`)
    if (process.env.UPDATE_DOCS) writeFileSync(file, text)
    expect(readFileSync(file, 'utf8')).toBe(text)
  })

  it('reads the modules of the catalogue themselves', async () => {
    const byId = new Map(catalogue.map(module => [module.id, module]))
    for (const [id, load] of Object.entries(atNeed)) expect(await load(), id).toBe(byId.get(id))
  })
})

describe('the modules that a notebook names', () => {
  it('are these and each once', async () => {
    const named = await modulesNamed(['levels', 'water-store', 'levels'])
    expect(named.map(({ id }) => id)).toEqual(['levels', 'water-store'])
    expect(await modulesNamed([])).toEqual([])
  })

  it('are the whole catalogue where one of the names is none, or a name that every object has', async () => {
    expect(await modulesNamed(['levels', 'levls'])).toBe(catalogue)
    expect(await modulesNamed(['constructor'])).toBe(catalogue)
  })
})
