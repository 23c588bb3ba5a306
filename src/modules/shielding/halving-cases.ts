import type { PublishedCase } from '../module.ts'

const lead = (thickness: string) => [{ material: 'lead', thickness }]
const concrete = (thickness: string) => [{ material: 'concrete', thickness }]

/** Published statements and table pairs, and stacks worked out by hand. */
export const halvingCases: readonly PublishedCase[] = [
  {
    id: 'HL-1',
    source: 'C. H. Kearny, Nuclear war survival skills: 36 inches of packed earth are ten halvings (quoted)',
    status: 'looked up',
    says: 'ten halvings of 3.6 in',
    inputs: { layers: [{ material: 'packed earth', thickness: '36 in' }], required_factor: '1000' },
    answers: { P: '1024', n_all: '10.00' },
  },
  {
    id: 'HL-2',
    source: 'Stack worked out from the halving thicknesses 61.0 and 91.4 mm',
    status: 'computed',
    says: '300 mm of concrete and 600 mm of earth',
    inputs: {
      layers: [
        { material: 'concrete', thickness: '300 mm' },
        { material: 'packed earth', thickness: '600 mm' },
      ],
      required_factor: '1000',
    },
    answers: { T: '3.4946e-4' },
    tolerance: { relative: 0.001 },
  },
  {
    id: 'HL-3',
    source: 'Identity: a tenth-value thickness is log2(10) halving thicknesses, here of 2.4 in',
    status: 'computed',
    says: 'one tenth-value thickness of concrete',
    inputs: { layers: concrete('2.4 in * log(10) / log(2)'), required_factor: '10' },
    answers: { P: '10.00', n_tenth: '1.000' },
    tolerance: { relative: 0.0001 },
  },
  {
    id: 'HL-4',
    source: 'ASTM E94, reprinted tables of half- and tenth-value thicknesses: lead, Co-60, 12.4 and 41 mm',
    status: 'looked up',
    says: 'the printed tenth-value thickness is one tenth by the printed halving thickness',
    inputs: { layers: lead('41 mm'), spectrum: 'Co-60', required_factor: '9' },
    answers: { n_tenth: '1.000' },
    tolerance: { relative: 0.01 },
  },
  {
    id: 'HL-5',
    source: 'ASTM E94, reprinted tables of half- and tenth-value thicknesses: concrete, Co-60, 66 and 220 mm',
    status: 'looked up',
    says: 'the printed tenth-value thickness is one tenth by the printed halving thickness',
    inputs: { layers: concrete('220 mm'), spectrum: 'Co-60', required_factor: '9' },
    answers: { n_tenth: '1.000' },
    tolerance: { relative: 0.01 },
  },
]
