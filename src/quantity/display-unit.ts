import { exponentOf } from './dimension.ts'
import { rowOf } from './dimension-table.ts'
import { add, multiply, rational, zero } from './rational.ts'
import type { Base, Dimension, Rational, System, Unit, UnitPart } from './types.ts'
import { unitFromParts, unitOf } from './unit.ts'

/** What stands for each base where a dimension has no unit of its own. */
const baseUnits: Readonly<Record<System, Readonly<Record<Base, string>>>> = {
  SI: {
    length: 'm',
    mass: 'kg',
    time: 's',
    temperature: 'K',
    current: 'A',
    amount: 'mol',
    luminous: 'candela',
    person: 'person',
    dose: 'Sv',
  },
  US: {
    length: 'ft',
    mass: 'lb',
    time: 's',
    temperature: 'delta_degF',
    current: 'A',
    amount: 'mol',
    luminous: 'candela',
    person: 'person',
    dose: 'rem',
  },
}
const forceUnit: Readonly<Record<System, string>> = { SI: 'kN', US: 'kip' }

/**
 * The unit a result of this dimension is shown in when no one says: from the table of dimensions, never found by cancelling.
 * A dimension without a row is built of base units, with a force where mass and time make one: `kN*m^3`, `m^3/s^3`.
 */
export function displayUnit(dimension: Dimension, system: System): Unit {
  const row = rowOf(dimension)
  return row ? unitOf(row[system]) : built(dimension, system)
}

/** The unit a temperature on a scale is shown in when no one says. */
export const displayPoint = (system: System): Unit => unitOf(system === 'SI' ? 'degC' : 'degF')

function built(dimension: Dimension, system: System): Unit {
  const mass = exponentOf(dimension, 'mass')
  const isForce = add(exponentOf(dimension, 'time'), multiply(mass, rational(2))).n === 0
  const force = isForce ? mass : zero
  const parts: UnitPart[] = [{ name: forceUnit[system], exponent: force }]
  for (const [base, name] of Object.entries(baseUnits[system]) as [Base, string][])
    parts.push({ name, exponent: left(dimension, { base, force }) })
  return unitFromParts(parts)
}

/** Exponent of a base once the force is taken out: a force is mass * length / time^2. */
function left(dimension: Dimension, { base, force }: { base: Base; force: Rational }): Rational {
  const share = { mass: -1, length: -1, time: 2 } as Partial<Record<Base, number>>
  return add(exponentOf(dimension, base), multiply(force, rational(share[base] ?? 0)))
}
