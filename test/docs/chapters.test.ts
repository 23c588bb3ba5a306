import { readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { plan } from '../../src/evaluation/plan.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import { readNotebook } from '../../src/notebook/read-notebook.ts'
import { unitsTable } from './units-table.ts'

const root = new URL('../../', import.meta.url)
const read = (path: string): string => readFileSync(new URL(path, root), 'utf8')
const marks = /(## Units\n\n[^\n]+\n\n)[\s\S]*?(\n\n## Digits)/

if (process.env.UPDATE_DOCS) {
  writeFileSync(
    new URL('docs/2-formulas.md', root),
    read('docs/2-formulas.md').replace(marks, (_, head, tail) => `${head}${unitsTable()}${tail}`),
  )
}

describe('docs', () => {
  it('2-formulas.md: lists exactly the units of the code', () => {
    expect(read('docs/2-formulas.md')).toContain(`\n\n${unitsTable()}\n\n`)
  })

  it('README.md: the smallest notebook evaluates without an error or a warning', () => {
    const text = /````markdown\n([\s\S]*?)\n````/.exec(read('README.md'))?.[1] ?? ''
    const results = evaluate(plan(readNotebook(`${text}\n`, { path: 'smallest.md' }), catalogue))
    expect(results.diagnostics).toEqual([])
    const flow = results.plan.names.get('air.Q')
    expect(flow?.kind === 'number' && results.slots[flow.slot]).toBeCloseTo(0.02, 12)
  })

  it('README.md: its two commands are the ones that package.json and CI know', () => {
    const commands = [...read('README.md').matchAll(/```sh\n(.+)\n```/g)].map(found => found[1])
    expect(commands).toEqual([
      'npm ci && npm run build && node dist/command.js issue examples/skerry-point/skerry-point.md --out out',
      'npm ci && npm test',
    ])
    expect(read('.ci/run')).toContain('npm ci && npm test')
  })

  it('every link between the pages leads to a file', () => {
    const pages = [
      'README.md',
      'DEVELOPERS.md',
      'docs/1-notebooks.md',
      'docs/2-formulas.md',
      'docs/3-package.md',
      'docs/4-commands.md',
      'docs/5-remark.md',
      'docs/6-revisions.md',
      'docs/7-checking.md',
      'docs/8-a-to-b.md',
      'docs/6-revisions.md',
    ]
    const dead = pages.flatMap(page => {
      const links = [...read(page).matchAll(/\]\((?!https?:)([^)#]+)(?:#[^)]*)?\)/g)].map(found => found[1] ?? '')
      return links
        .filter(link => {
          try {
            return readFileSync(new URL(link, new URL(page, root))).length === 0
          } catch {
            return true
          }
        })
        .map(link => `${page}: ${link}`)
    })
    expect(dead).toEqual([])
  })
})
