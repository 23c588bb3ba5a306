import { concreteNomenclature } from './concrete/nomenclature.ts'
import { groundNomenclature } from './ground/nomenclature.ts'
import type { Wing } from './ledger.ts'
import { livingNomenclature } from './living/nomenclature.ts'
import { powerNomenclature } from './power/nomenclature.ts'
import { shieldingNomenclature } from './shielding/nomenclature.ts'

/** Within a wing one symbol has one meaning: symbol to meaning, where modules say it in several ways. */
export const nomenclature: Readonly<Record<Wing, Readonly<Record<string, string>>>> = {
  ground: groundNomenclature,
  concrete: concreteNomenclature,
  shielding: shieldingNomenclature,
  living: livingNomenclature,
  power: powerNomenclature,
}
