import { describe, expect, it } from 'vitest'
import { runCase } from '../../src/evaluation/run-case.ts'
import { catalogue } from '../../src/modules/catalogue.ts'

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
