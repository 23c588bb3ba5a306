import { describe, expect, it } from 'vitest'
import { readLiteral } from '../../src/evaluation/literal.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import type { PublishedCase } from '../../src/modules/module.ts'
import { lastPlace } from '../../src/quantity/number-print.ts'
import { inUnit } from '../../src/quantity/to-unit.ts'
import { runModule } from './run-module.ts'

/** How far our answer may lie from the printed one, in the printed unit. */
function allowed(answer: { digits: string }, tolerance: PublishedCase['tolerance']): number {
  if (tolerance && 'relative' in tolerance) return tolerance.relative * Math.abs(Number(answer.digits))
  const units = tolerance ? tolerance.units : 0.5
  return units * lastPlace(answer.digits)
}

for (const module of catalogue) {
  describe(`${module.id}: published cases`, () => {
    it('has at least one case from outside, and each input and answer exists', () => {
      expect(module.published.length).toBeGreaterThan(0)
    })
    for (const published of module.published) {
      it(`${published.id}: ${published.source} (${published.status})`, () => {
        const us = Object.values(published.answers).some(answer =>
          /\b(psf|psi|ft|in|lbf|kip|pcf|cfm|gal)\b/.test(answer),
        )
        const ran = runModule(module, published.inputs, { units: us ? 'US' : 'SI' })
        expect(ran.errors).toEqual([])
        for (const [name, text] of Object.entries(published.answers)) {
          const printed = readLiteral(text)
          if (!printed) throw new Error(`the printed answer ${text} is not a quantity`)
          const ours = inUnit(ran.si(name), printed.unit)
          const slack = allowed(printed, published.tolerance) * (1 + 1e-9)
          expect(Math.abs(ours - Number(printed.digits)), `${name}: ours ${ours}, printed ${text}`).toBeLessThanOrEqual(
            slack,
          )
        }
      })
    }
  })
}
