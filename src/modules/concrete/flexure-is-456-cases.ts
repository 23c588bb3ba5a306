import type { CaseInput, PublishedCase } from '../module.ts'

const sp16 = 'SP 16:1980, Design aids for reinforced concrete to IS 456'
const section: Readonly<Record<string, CaseInput>> = {
  moment: '10 kN*m/m',
  thickness: '180 mm',
  cover: '25 mm',
  bar_size: '10 mm',
  spacing: '100 mm',
  f_ck: '20 MPa',
  steel: 'Fe 415',
}

const limiting = (id: string, steel: string, printed: string): PublishedCase => ({
  id,
  source: `${sp16}, Table C`,
  status: 'memory',
  says: `limiting moment over \`f_ck * b * d^2\`, ${steel}; the table rests on 0.416, the code on 0.42`,
  inputs: { ...section, steel },
  answers: { K_lim: printed },
  tolerance: { units: 1 },
})

/** Worked by the formulas of Annex G, and design aids to the code. */
export const flexureIs456Cases: readonly PublishedCase[] = [
  {
    id: 'flex-9',
    source: 'IS 456:2000, cl. 38.1 and Annex G, G-1.1(b)',
    status: 'computed',
    says: '`b == 1000 mm`, `d == 150 mm`, steel `1000 mm^2`, M20, Fe 415 (46.55 by the stress block, 46.67 by G-1.1(b))',
    inputs: { ...section, spacing: 'pi / 4 * (10 mm)^2 / (1000 mm^2) * 1000 mm' },
    answers: { d: '150 mm', A_st: '1000 mm^2', x_u: '50.1 mm', M_R: '46.6 kN*m/m', M_R_strain: '46.6 kN*m/m' },
    tolerance: { relative: 0.005 },
  },
  limiting('flex-6a', 'Fe 250', '0.149'),
  limiting('flex-6b', 'Fe 415', '0.138'),
  limiting('flex-6c', 'Fe 500', '0.133'),
  {
    id: 'bar-2a',
    source: 'tables of bar areas, 12 mm at 150 mm',
    status: 'looked up',
    says: 'area per metre',
    inputs: { ...section, bar_size: '12 mm', spacing: '150 mm' },
    answers: { A_st: '754 mm^2' },
  },
  {
    id: 'bar-2b',
    source: 'tables of bar areas, 10 mm at 200 mm',
    status: 'looked up',
    says: 'area per metre',
    inputs: { ...section, bar_size: '10 mm', spacing: '200 mm' },
    answers: { A_st: '393 mm^2' },
  },
  {
    id: 'bar-4',
    source: 'published design sheet to IS 456, least steel of a slab 125 mm thick, Fe 415',
    status: 'looked up',
    says: '0.12 % of the gross section',
    inputs: { ...section, thickness: '125 mm', moment: '1 kN*m/m' },
    answers: { A_min: '150 mm^2' },
  },
]
