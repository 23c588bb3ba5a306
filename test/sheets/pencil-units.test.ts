import { fromHtmlIsomorphic } from 'hast-util-from-html-isomorphic'
import katex from 'katex'
import { describe, expect, it } from 'vitest'
import type { Unit } from '../../src/quantity/types.ts'
import { unitOf, unitTex } from '../../src/quantity/unit.ts'
import { unitNames } from '../../src/quantity/units.ts'
import { all } from '../../src/sheets/pencil/find-elements.ts'
import type { Mark } from '../../src/sheets/pencil/mark.ts'
import { readMath } from '../../src/sheets/pencil/read-math.ts'
import { reckon } from '../../src/sheets/pencil/reckon.ts'

/** What the page shows, read back as marks. */
function marks(tex: string): readonly Mark[] {
  const page = fromHtmlIsomorphic(katex.renderToString(tex, { output: 'mathml' }), { fragment: true })
  return all(page, element => element.tagName === 'math').flatMap(readMath)
}

function worth(unit: Unit): number {
  return unit.factor + (unit.offset ?? 0)
}

describe('pencil units: two tables, made apart, agree', () => {
  it.each(unitNames)('%s', name => {
    const unit = unitOf(name)
    const read = reckon(marks(`1\\;${unitTex(unit)}`))
    expect(read.value / worth(unit)).toBeCloseTo(1, 12)
  })
  it.each(['kN*m/m', 'W/(m^2*K)', 'kN/m^3', '1/m', 'm^3/(hr*person)', 'kip*ft/ft', 'ft^3/min', 'mohm/ft', 'kohm*m'])(
    '%s',
    text => {
      const unit = unitOf(text)
      const read = reckon(marks(`3\\;${unitTex(unit)}`))
      expect(read.value / (3 * unit.factor)).toBeCloseTo(1, 12)
    },
  )
})

describe('pencil units: a temperature below nought', () => {
  const C = unitTex(unitOf('degC'))
  const F = unitTex(unitOf('degF'))
  // by hand: -12 degC is 261.15 K, and 37 K below 25 degC; 0 degF is 255.372 K
  it.each([
    [`-12\\;${C}`, 261.15],
    [`-12\\;${C}-25\\;${C}`, -37],
    [`(-12\\;${C}-25\\;${C})`, -37],
    [`25\\;${C}-12\\;${C}`, 13],
    [`-40\\;${F}`, 233.15],
    [`-2^2`, -4],
    [`-12\\;\\mathrm{K}`, -12],
  ])('%s', (tex, kelvin) => {
    expect(reckon(marks(tex)).value).toBeCloseTo(kelvin, 9)
  })
})
