import type { CaseInput, PublishedCase } from '../module.ts'

const concrete = (thickness: string): Readonly<Record<string, CaseInput>> => ({
  layers: [{ material: 'concrete', thickness }],
  required_factor: '10',
})

const slab = (mass: string, middle: string, hard: string): PublishedCase => ({
  id: `RP-${mass}`,
  source: 'Protection of a slab without end over 1 m in the open, tabulated for this project by the same kernel',
  status: 'computed',
  says: `${mass} \`kg/m^2\` at 1.25 and 2 MeV`,
  inputs: concrete(`${mass} kg/m^2 / (2300 kg/m^3)`),
  answers: { P_m: middle, P_h: hard },
})

const roof: Readonly<Record<string, CaseInput>> = {
  layers: [
    { material: 'packed earth', thickness: '600 mm' },
    { material: 'concrete', thickness: '300 mm' },
  ],
  required_factor: '10',
}

/** Masses, the kernel worked apart, and the quoted ten halvings of earth. */
export const roofProtectionCases: readonly PublishedCase[] = [
  {
    id: 'RP-1',
    source: 'Worked by hand: 300 mm of concrete at 2300 `kg/m^3` and 600 mm of soil at 1600 `kg/m^3`',
    status: 'computed',
    says: 'mass per area of the roof',
    inputs: roof,
    answers: { X_all: '337.95 lb/ft^2' },
    tolerance: { relative: 1e-5 },
  },
  {
    id: 'RP-2',
    source: 'Plane source with the Berger form 1.0278 and 0.0661, integrated numerically over the plane',
    status: 'computed',
    says: '300 mm of concrete at 1 MeV',
    inputs: { ...concrete('300 mm'), energy: '1 MeV' },
    answers: { b_m: '4.48155', f_m: '9.433426e-3' },
    tolerance: { relative: 1e-4 },
  },
  slab('250', '15.2', '12.3'),
  slab('500', '69', '44'),
  slab('750', '288', '145'),
  slab('1000', '1.17e3', '458'),
  slab('1465', '1.5e4', '3.7e3'),
  {
    id: 'RP-5',
    source: 'C. H. Kearny, Nuclear war survival skills: 36 inches of packed earth are ten halvings (quoted)',
    status: 'looked up',
    says: 'the halving rule under 3 ft of earth',
    inputs: { layers: [{ material: 'packed earth', thickness: '36 in' }], required_factor: '1000' },
    answers: { P_half: '1024' },
  },
]
