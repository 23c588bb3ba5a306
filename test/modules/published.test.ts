import { describe, expect, it } from 'vitest'
import { runCase } from '../../src/evaluation/run-case.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import type { Module } from '../../src/modules/module.ts'

/** Modules that no printed answer in the shape of a case is known for, each with what stands in its place. */
const heldOtherwise: Readonly<Record<string, string>> = {
  'one-way-shear-aci-318':
    'four beams that failed in a laboratory, in its own test: a failing load bounds the answer and is not it',
}

const hasPrintedCase = ({ published }: Module): boolean => published.some(({ status }) => status !== 'computed')

describe('the catalogue against what is published', () => {
  it('has a case looked up or recalled for each module, save those named', () => {
    const without = catalogue.filter(module => !hasPrintedCase(module)).map(({ id }) => id)
    expect(without).toEqual(Object.keys(heldOtherwise))
  })
})

for (const module of catalogue) {
  describe(`${module.id}: published cases`, () => {
    it('has at least one case from outside', () => {
      expect(module.published.length).toBeGreaterThan(0)
    })
    for (const published of module.published) {
      it(`${published.id}: ${published.source} (${published.status})`, () => {
        const { results, answers } = runCase(module, published)
        expect(results.diagnostics.filter(fault => fault.severity === 'error')).toEqual([])
        expect(answers.length).toBeGreaterThan(0)
        for (const { name, value, published: printed, allowed, agrees } of answers) {
          expect(agrees, `${name}: ours ${value}, printed ${printed} ± ${allowed}`).toBe(true)
        }
      })
    }
  })
}
