import { describe, expect, it } from 'vitest'
import { calcNotebook } from '../../src/evaluation/calc-notebook.ts'
import { plan } from '../../src/evaluation/plan.ts'
import type { Line, Printed, Substitution } from '../../src/evaluation/workings.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import { roofLoad } from '../../src/modules/concrete/roof-load.ts'
import { wallStrip } from '../../src/modules/concrete/wall-strip.ts'
import type { CaseInput, Module } from '../../src/modules/module.ts'
import { calcText } from '../evaluation/module-text.ts'
import { linesOf, runText } from '../evaluation/run-text.ts'
import { inputSets } from './input-sets.ts'

const run = (module: Module, inputs: Readonly<Record<string, CaseInput>>, units: 'SI' | 'US' = 'SI') =>
  runText(calcText(module.id, 'it', inputs), { units })

const linesIn = (module: Module, inputs: Readonly<Record<string, CaseInput>>, units?: 'SI' | 'US'): readonly Line[] => {
  const block = run(module, inputs, units).block('it')
  return block ? linesOf(block) : []
}

/** Every number put into a line, with its interpolations. */
function putInto(line: Line): Printed[] {
  const workings: Substitution[] = []
  if ('working' in line && line.working) workings.push(line.working)
  if (line.kind === 'look') workings.push(...line.interpolations.map(({ working }) => working))
  const operands = workings.flatMap(({ operands }) => [...operands.values()].flat())
  const keys = line.kind === 'look' ? [line.rowAxis.key, line.columnAxis?.key] : []
  return [...operands, ...keys.filter((key): key is Printed => typeof key === 'object')]
}

const nearly = (a: number, b: number): boolean => Math.abs(a - b) <= 0.0005 * Math.abs(a)

/** Pairs that differ in their digits alone: `13.7795 ft` and `13.780 ft` beside each other. */
function unlike(line: Line): string[] {
  const put = putInto(line).map(({ shown }) => shown)
  return put.flatMap(({ digits, unit }, index) =>
    put
      .slice(0, index)
      .filter(other => other.unit.text === unit.text && nearly(Number(other.digits), Number(digits)))
      .filter(other => other.digits !== digits)
      .map(other => `${line.number}: ${other.digits} and ${digits}`),
  )
}

describe('lines of working', () => {
  it.each(catalogue.map(module => [module.id, module] as const))(
    '%s: one value stands in one set of digits',
    (_, module) => {
      for (const units of ['SI', 'US'] as const)
        for (const line of linesIn(module, module.example, units)) expect(unlike(line)).toEqual([])
    },
  )

  it.each(catalogue.map(module => [module.id, module] as const))(
    '%s: a branch over a choice reads true',
    (_, module) => {
      for (const inputs of inputSets(module)) {
        for (const line of plan(calcNotebook(module, inputs, 'SI'), [module]).trail)
          if (line.kind === 'branch' && line.chosen) expect(line.chosen.holds, line.says).toBe(true)
      }
    },
  )

  it('wall-strip: what was chosen stands in the words of the input', () => {
    const branches = linesIn(wallStrip, wallStrip.example).filter(line => line.kind === 'branch')
    expect(branches.map(({ says, because }) => [says, because])).toEqual([
      ['the base is fixed and the top pinned: a propped strip', 'how the roof holds the wall: pinned'],
    ])
    const free = linesIn(wallStrip, { ...wallStrip.example, top: 'free' }).filter(line => line.kind === 'branch')
    expect(free.map(({ says }) => says)).toEqual(['the base is fixed and the top free: a cantilever'])
  })
})

describe('inputs of one choice', () => {
  const given = (inputs: Readonly<Record<string, CaseInput>>) => {
    const block = run(roofLoad, { ...roofLoad.example, ...inputs }).block('it')
    return block?.kind === 'calc' ? block.given : []
  }
  const names = (inputs: Readonly<Record<string, CaseInput>>) => given(inputs).map(({ name }) => name)

  it('every one without a default is asked for with its own words', () => {
    const asked = catalogue.flatMap(({ id, inputs, example }) =>
      Object.entries(inputs).flatMap(([name, input]) => {
        if (input.kind !== 'quantity' || !input.when || input.optional || input.default !== undefined) return []
        if (!input.when.is.includes(String(example[input.when.choice]))) return []
        const { [name]: _, ...rest } = example
        const { diagnostics } = runText(calcText(id, 'it', rest), { units: 'SI' }).workings
        return [{ name: `${id}.${name}`, rules: diagnostics.map(({ rule }) => rule) }]
      }),
    )
    expect(asked.map(({ name }) => name)).toContain('slope-circle.phi')
    expect(asked.filter(({ rules }) => !rules.includes('key-missing'))).toEqual([])
  })

  it('roof-load: the reduction factors of EN 1990 stand only where it is used', () => {
    expect(names({ combination: 'IS 456' })).not.toContain('psi_0')
    expect(names({ combination: 'ACI 318' })).not.toContain('xi')
    expect(names({ combination: 'EN 1990 6.10' })).not.toContain('psi_0')
    expect(names({ combination: 'EN 1990 6.10a and 6.10b' })).toEqual(expect.arrayContaining(['psi_0', 'xi', 'psi_2']))
  })

  it('roof-load: one that is given all the same says that it has no part', () => {
    const row = given({ combination: 'IS 456', xi: '0.9' }).find(({ name }) => name === 'xi')
    expect(row?.says).toBe('reduction of the permanent load in expression 6.10b: no part in this calculation')
  })

  it('roof-load: the load that stays is cited from EN 1990 only where that is the rule', () => {
    const source = (combination: string) =>
      linesIn(roofLoad, { ...roofLoad.example, combination }).find(
        line => line.kind === 'formula' && line.name === 'w_qp',
      )?.reference
    expect(source('EN 1990 6.10')).toEqual({ key: 'en-1990', at: '6.16b' })
    expect(source('IS 456')?.key).toBe('practice')
    expect(source('ACI 318')?.key).toBe('practice')
  })
})
