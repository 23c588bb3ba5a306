import { concreteModules } from './concrete/concrete-modules.ts'
import { groundModules } from './ground/ground-modules.ts'
import { type Wing, wings } from './ledger.ts'
import { livingModules } from './living/living-modules.ts'
import type { Module } from './module.ts'
import { powerModules } from './power/power-modules.ts'
import { shieldingModules } from './shielding/shielding-modules.ts'

/** The modules of each wing. */
export const modulesByWing: Readonly<Record<Wing, readonly Module[]>> = {
  ground: groundModules,
  concrete: concreteModules,
  shielding: shieldingModules,
  living: livingModules,
  power: powerModules,
}

/** The wings, in the order of the job. */
export const wingOrder = Object.keys(wings) as readonly Wing[]

/** Every module, wing after wing. */
export const catalogue: readonly Module[] = wingOrder.flatMap(wing => modulesByWing[wing])
