import type { PublishedCase } from '../module.ts'

const mosley = 'Mosley, Bungey and Hulse, Reinforced concrete design to Eurocode 2'

/** Lever arm over depth, on a depth of 100 mm, 1 m wide, 30 MPa. */
const leverArm = (id: string, moment: string, says: string, printed: string): PublishedCase => ({
  id,
  source: 'The Concrete Centre, How to design concrete structures using Eurocode 2, table 5',
  status: 'looked up',
  says,
  inputs: {
    moment,
    thickness: '130 mm',
    cover: '25 mm',
    bar_size: '10 mm',
    spacing: '100 mm',
    f_ck: '30 MPa',
    f_yk: '500 MPa',
    alpha_cc: '0.85',
  },
  answers: { d: '100 mm', z_c: printed },
})

/** Worked examples and a design table. */
export const flexureEn1992Cases: readonly PublishedCase[] = [
  {
    id: 'flex-3',
    source: `${mosley}, example 4.1`,
    status: 'memory',
    says: 'moment `185 kN*m` on a width of 260 mm, depth 440 mm, C25',
    inputs: {
      moment: '185 kN*m / (260 mm)',
      thickness: '490 mm',
      cover: '40 mm',
      bar_size: '20 mm',
      spacing: '75 mm',
      f_ck: '25 MPa',
      f_yk: '500 MPa',
      alpha_cc: '0.85',
      width: '260 mm',
    },
    answers: { d: '440 mm', z_c: '373 mm', A_req: '1140 mm^2' },
    tolerance: { relative: 0.003 },
  },
  {
    id: 'flex-4',
    source: `${mosley}, example 4.2`,
    status: 'memory',
    says: 'steel `1470 mm^2` on a width of 300 mm, depth 520 mm, C25',
    inputs: {
      moment: '600 kN*m/m',
      thickness: '570 mm',
      cover: '40 mm',
      bar_size: '20 mm',
      spacing: 'pi / 4 * (20 mm)^2 / (1470 mm^2) * 300 mm',
      f_ck: '25 MPa',
      f_yk: '500 MPa',
      alpha_cc: '0.85',
      width: '300 mm',
    },
    answers: { d: '520 mm', A_s: '1470 mm^2', x: '188 mm', M_n: '284 kN*m' },
    tolerance: { relative: 0.003 },
  },
  leverArm('flex-5a', '15 kN*m/m', 'K of 0.05: lever arm 0.954 of the depth', '95.4 mm'),
  leverArm('flex-5b', '30 kN*m/m', 'K of 0.10: lever arm 0.902 of the depth', '90.2 mm'),
  leverArm('flex-5c', '45 kN*m/m', 'K of 0.15: lever arm 0.843 of the depth', '84.3 mm'),
]
