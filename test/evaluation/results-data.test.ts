import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { resultsData } from '../../src/evaluation/results-data.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import { inUnit } from '../../src/quantity/to-unit.ts'
import { unitOf } from '../../src/quantity/unit.ts'
import { calcText } from './module-text.ts'
import { fence, type RunText, runText } from './run-text.ts'
import { sampleBody } from './sample-sheet.ts'
import { toys } from './toy-modules.ts'

const schema = JSON.parse(readFileSync('docs/results.schema.json', 'utf8'))
const validate = new Ajv2020({ allErrors: true, strict: true }).compile(schema)

// biome-ignore lint/suspicious/noExplicitAny: the data is read as JSON
type Json = any

const dataOf = (ran: RunText): Json =>
  JSON.parse(
    JSON.stringify(
      resultsData(ran.results, ran.workings, { tool: 'undercroft 0.1.0', path: 'trial.md', sha256: 'ab'.repeat(32) }),
    ),
  )

const faults = (data: unknown): string[] =>
  validate(data) ? [] : (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`)

const allExamples = catalogue.map(({ id, example }, index) => calcText(id, `it_${index}`, example)).join('')
const sample = runText(sampleBody())
const sheets: readonly (readonly [string, RunText])[] = [
  ['the sample sheet', sample],
  ['the same in US units', runText(sampleBody(), { units: 'US' })],
  ['every module', runText(allExamples)],
  [
    'a sheet with faults',
    runText(sampleBody().replace('site.wall / 6', 'site.wall / 0').replace('depth: heights', 'deepth: heights')),
  ],
  ['a ring and an unknown name', runText(fence('work v', 'a = b\nb = a\nc = nothing\nd = c'))],
  [
    'branches and methods',
    runText(
      fence('calc branches b', 'x: 4') +
        fence('calc solves s', 'x: 9') +
        fence('calc looks l', 'span: 1.5 m\ncount: 1') +
        fence('calc rows r', 'items: [{ item: one, x: 1 m }]') +
        fence('calc warmth w', 'T: 20 degC\nrise: 5 K'),
      { modules: toys },
    ),
  ],
  ['a second method that is absent', runText(fence('calc solves s', 'x: 4'), { modules: toys })],
  ['an empty notebook', runText('')],
]

describe('results as data', () => {
  for (const [title, ran] of sheets) {
    it(`${title}: fits the published schema, and loses nothing on its way through JSON`, () => {
      const raw = resultsData(ran.results, ran.workings, {
        tool: 'undercroft 0.1.0',
        path: 'trial.md',
        sha256: 'ab'.repeat(32),
      })
      const data = dataOf(ran)
      expect(faults(data)).toEqual([])
      expect(data).toStrictEqual(raw)
      expect(JSON.stringify(data)).not.toMatch(/null|NaN|Infinity/)
    })
  }

  it('shown is the SI number in the unit shown, to the figures shown', () => {
    const data = dataOf(sample)
    const entries = data.blocks.flatMap((block: Json) => [
      ...Object.values(block.outputs),
      ...Object.values(block.inputs ?? {}),
    ])
    let compared = 0
    for (const { si, shown, unit } of entries) {
      if (si === undefined) continue
      const value = inUnit(si, unitOf(unit))
      expect(Math.abs(value - Number(shown)), `${shown} ${unit}`).toBeLessThanOrEqual(6e-4 * Math.abs(value))
      compared += 1
    }
    expect(compared).toBeGreaterThan(100)
  })

  it('outputs are what the block gives: its inputs are not among them, and each names its step', () => {
    const roof = dataOf(sample).blocks.find((block: Json) => block.name === 'roof')
    expect(Object.keys(roof.inputs)).toContain('long_span')
    expect(Object.keys(roof.outputs)).not.toContain('long_span')
    const numbers = new Set(roof.steps.map((step: Json) => step.number))
    for (const { step } of Object.values<Json>(roof.outputs)) expect(numbers).toContain(step)
  })

  it('a value says what its remark says, and without one how it is made', () => {
    const { outputs } = dataOf(runText(fence('work v', 'l_s = 2 m # side\nA_s = l_s * l_s'))).blocks[0]
    expect([outputs.l_s.says, outputs.A_s.says]).toEqual(['side', 'l_s * l_s'])
  })

  it('what could not be evaluated is absent and explained', () => {
    const data = dataOf(runText(fence('work v', 'u = 1 - 1\nx = 1 / u\ny = x')))
    expect(Object.keys(data.blocks[0].outputs)).toEqual(['u'])
    expect(data.blocks[0].complete).toBe(false)
    expect(data.diagnostics).toMatchObject([{ rule: 'value-not-finite', stops: 1, place: { line: 7, column: 1 } }])
  })
})

/** Sets one value of the data; `undefined` takes it away. A key of -1 is the last. */
function put(at: Json, [key = '', ...rest]: readonly string[], value: unknown): void {
  const own = key === '-1' ? at.length - 1 : key
  if (rest.length > 0) put(at[own], rest, value)
  else if (value === undefined) delete at[own]
  else at[own] = value
}

describe('the schema', () => {
  const corruptions: readonly (readonly [string, string, unknown])[] = [
    ['another format', 'format', 2],
    ['a key it does not know', 'extra', 1],
    ['no blocks', 'blocks', undefined],
    ['a value of null', 'blocks.0.outputs.z_roof.si', null],
    ['a number as text', 'blocks.0.outputs.z_roof.si', '1.2'],
    ['NaN as text in print', 'blocks.0.outputs.z_roof.shown', 'NaN'],
    ['an output without its step', 'blocks.0.outputs.z_roof.step', undefined],
    ['a step of no kind', 'blocks.0.steps.0.kind', 'guess'],
    ['a formula without its numbers', 'blocks.0.steps.0.shown', undefined],
    ['a check without a verdict', 'blocks.0.checks.0.satisfied', undefined],
    ['a check without its doubts', 'blocks.0.checks.0.outside_limits', undefined],
    ['a doubt in words', 'blocks.0.checks.0.methods_differ', 'no'],
    ['a check by a third method', 'blocks.0.checks.0.method', 'third'],
    ['a limit without its method', 'blocks.0.limits.0.method', undefined],
    ['a negative ratio', 'blocks.0.checks.0.ratio', -1],
    ['a hash too short', 'notebook.sha256', 'ab'],
    ['a status that is none', 'assumptions.0.status', 'maybe'],
    ['an assumption with neither number nor words', 'assumptions.0.si', undefined],
    ['a message without a place', 'diagnostics.0.place', undefined],
    ['a block that is not a calculation with a module', 'blocks.-1.module', 'levels'],
  ]
  for (const [title, path, value] of corruptions) {
    it(`refuses ${title}`, () => {
      const data = dataOf(sample)
      expect(faults(data)).toEqual([])
      put(data, path.split('.'), value)
      expect(faults(data)).not.toEqual([])
    })
  }

  it('says of every field what it is', () => {
    const bare: string[] = []
    const walk = (at: Json, path: string): void => {
      if (typeof at !== 'object' || at === null) return
      for (const [key, value] of Object.entries<Json>(at.properties ?? {})) {
        const described = value.description ?? schema.$defs[String(value.$ref).replace('#/$defs/', '')]?.description
        if (!described && value.const === undefined && !value.enum && !/^(line|column|offset|end|name)$/.test(key))
          bare.push(`${path}.${key}`)
      }
      for (const [key, value] of Object.entries(at)) walk(value, `${path}/${key}`)
    }
    walk(schema, '')
    expect(bare).toEqual([])
  })
})
