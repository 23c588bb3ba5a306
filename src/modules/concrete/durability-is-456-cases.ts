import type { CaseInput, PublishedCase } from '../module.ts'

const mix: Readonly<Record<string, CaseInput>> = {
  member: 'slab or wall',
  cover: '75 mm',
  largest_bar: '16 mm',
  aggregate: '20 mm',
  f_ck: '40 MPa',
  cement: '380 kg/m^3',
  water_cement: '0.40',
}

/** An exposure as it stands in Tables 5 and 16: cover, grade, cement, water over cement. */
const row = (exposure: string, [cover, grade, cement, water]: readonly string[]): PublishedCase => ({
  id: `dur-${exposure.replaceAll(' ', '-')}`,
  source: 'IS 456:2000, Tables 5 and 16, reinforced concrete',
  status: 'memory',
  says: `${exposure} exposure, aggregate of 20 mm`,
  inputs: { ...mix, exposure },
  answers: {
    c_tab: `${cover} mm`,
    f_least: `${grade} MPa`,
    C_least: `${cement} kg/m^3`,
    r_most: `${water}`,
  },
})

/** Rows of the tables, an adjustment, and a mix designed in print. */
export const durabilityIs456Cases: readonly PublishedCase[] = [
  row('moderate', ['30', '25', '300', '0.50']),
  row('severe', ['45', '30', '320', '0.45']),
  row('very severe', ['50', '35', '340', '0.45']),
  {
    id: 'dur-6',
    source: 'IS 456:2000, Tables 5 and 6',
    status: 'memory',
    says: 'severe exposure, aggregate of 10 mm: 40 kg more than 320',
    inputs: { ...mix, exposure: 'severe', aggregate: '10 mm' },
    answers: { C_least: '360 kg/m^3' },
  },
  {
    id: 'dur-mix',
    source: 'IS 10262:2009, Annex A, mix of M40 for severe exposure, aggregate of 20 mm: 350 kg/m3, 0.40',
    status: 'memory',
    says: 'the example asks for 320 kg/m3 and 0.45 at most, from Table 5 of IS 456',
    inputs: { ...mix, exposure: 'severe', cement: '350 kg/m^3' },
    answers: { C_least: '320 kg/m^3', r_most: '0.45' },
  },
]
