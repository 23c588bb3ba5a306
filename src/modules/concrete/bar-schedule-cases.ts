import type { PublishedCase } from '../module.ts'

type Row = Readonly<Record<string, string>>
const bs = 'BS 8666:2005, Table 3 (looked up in a reprint), worked apart'
const length = (id: string, says: string, row: Row, printed: string): PublishedCase => ({
  id,
  source: bs,
  status: 'computed',
  says,
  inputs: { bars: [{ mark: '01', count: '1', ...row }] },
  answers: { L_cut_1: printed },
})

/** Lengths by the formulas of BS 8666, and a mass by the tables of bars. */
export const barScheduleCases: readonly PublishedCase[] = [
  length(
    'sched-1',
    'shape 11, 12 mm, 900 and 400 mm: 1300 less half a radius of 24 and a diameter',
    { shape: 'shape 11', bar_size: '12 mm', a: '900 mm', b: '400 mm' },
    '1276 mm',
  ),
  length(
    'sched-2',
    'shape 51, 10 mm, 300 and 200 mm: 1000 and 160',
    { shape: 'shape 51', bar_size: '10 mm', a: '300 mm', b: '200 mm' },
    '1160 mm',
  ),
  {
    id: 'sched-3',
    source: 'Tables of bars, 0.888 kg/m for 12 mm',
    status: 'looked up',
    says: '20 straight bars of 12 mm and 3 m',
    inputs: { bars: [{ mark: '01', count: '20', shape: 'shape 00', bar_size: '12 mm', a: '3.00 m' }] },
    answers: { m_n_1: '53.3 kg', m_t: '53.3 kg' },
  },
]
