import type { LookStep, QuantityInput } from '../module.ts'
import { cite } from '../sources.ts'
import { table } from '../table.ts'
import { look, quantity } from '../words.ts'

/** Dose albedo of concrete for each steradian by photon energy in MeV: square on, thrown back within 15 degrees of the normal. */
export const concreteAlbedo = table(
  {
    title: 'Dose albedo of concrete for each steradian, square on and straight back',
    source: cite('albedo-concrete'),
    status:
      'computed, straight back: the largest of all directions; NCRP 151, from memory, is 14 % lower at 0.25 MeV, 9 % at 0.5 MeV and 23 % at 1.25 MeV',
    unit: '',
    row: {
      kind: 'numbers',
      says: 'photon energy',
      keys: ['0.25', '0.5', '0.662', '1.0', '1.25', '2.0'],
      unit: 'MeV',
      between: 'linear',
    },
  },
  '0.0372\n0.0208\n0.0165\n0.0107\n0.0091\n0.0063',
)

const energyUnit = { SI: 'MeV', US: 'MeV' }

/** Photon energy at the first wall that scatters; the softest of the table where none is given. */
export const energyAtBend: QuantityInput = quantity('energy', {
  says: 'photon energy at the first bend',
  note: 'Counts only by the albedo of the table. The softest of it has the largest albedo and is on the safe side; fallout gamma that has not been scattered is near 0.7 MeV',
  symbol: 'E_b',
  unit: energyUnit,
  least: '0.25 MeV',
  most: '2 MeV',
  default: '0.25 MeV',
  source: cite('albedo-concrete'),
})

/** The albedo at an energy. */
export const albedoAt = (name: string, energy: string, more: Pick<LookStep, 'says' | 'symbol'>): LookStep =>
  look(name, concreteAlbedo, { row: energy, ...more })
