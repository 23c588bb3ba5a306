import type { PublishedCase } from '../module.ts'

const strip = { moment: '30 kN*m/m', thickness: '250 mm', cover: '35 mm', bar_size: '12 mm', spacing: '150 mm' }
const concrete = { E_cm: '33 GPa', creep: '2.0', f_ct_eff: '2.9 MPa', f_yk: '500 MPa' }

/** Two sections worked apart, the greatest bar of a printed table, and an elastic section of a textbook. */
export const crackWidthEn1992Cases: readonly PublishedCase[] = [
  {
    id: 'crack-1',
    source: 'EN 1992-1-1, 7.3.4, worked apart',
    status: 'computed',
    says: 'slab of 250 mm, cover 35 mm, bars of 12 mm at 150 mm; the least strain governs',
    inputs: { ...strip, ...concrete, duration: 'long', w_max: '0.3 mm' },
    answers: { x: '63.2 mm', sigma_s: '211.7 MPa', h_c: '62.3 mm', s_r_max: '287.5 mm', w_k: '0.183 mm' },
  },
  {
    id: 'crack-2',
    source: 'EN 1992-1-1, 7.3.4, worked apart',
    status: 'computed',
    says: 'slab of 350 mm, cover 50 mm, bars of 20 mm at 125 mm',
    inputs: {
      moment: '120 kN*m/m',
      thickness: '350 mm',
      cover: '50 mm',
      bar_size: '20 mm',
      spacing: '125 mm',
      E_cm: '34 GPa',
      creep: '1.5',
      f_ct_eff: '3.2 MPa',
      f_yk: '500 MPa',
      duration: 'long',
      w_max: '0.3 mm',
    },
    answers: {
      x: '114.0 mm',
      sigma_s: '189.5 MPa',
      h_c: '78.7 mm',
      rho_eff: '0.03195',
      s_r_max: '276.4 mm',
      eps_m: '0.0007095',
      w_k: '0.196 mm',
    },
  },
  {
    id: 'crack-5',
    source: 'EN 1992-1-1, Table 7.2N and the assumptions under it: 12 mm is the greatest bar at 240 MPa for 0.2 mm',
    status: 'memory',
    says: 'cover 25 mm, 2.9 MPa, a tenth of the depth outside the bars, least steel of 7.3.2 with `k_c == 0.4`',
    inputs: {
      moment: '47.407 kN*m/m',
      thickness: '310 mm',
      cover: '25 mm',
      bar_size: '12 mm',
      spacing: 'pi / 4 * (12 mm)^2 / (0.4 * 2.9 * 0.5 * (310 mm) / 240)',
      ...concrete,
      creep: '0',
      duration: 'long',
      w_max: '0.2 mm',
    },
    answers: { sigma_s: '240 MPa', w_k: '0.2 mm' },
  },
  {
    id: 'crack-6',
    source:
      'J. C. McCormac and R. H. Brown, Design of Reinforced Concrete, cracked elastic beam of 12 in, effective depth 17 in, `3 in^2` of steel, ratio of moduli 9, 70 ft kip; the book goes on from a rounded 6.78 in',
    status: 'memory',
    says: 'elastic section: neutral axis and stress in the steel',
    inputs: {
      moment: '70000 lbf*ft/ft',
      thickness: '20 in',
      cover: '3 in - sqrt((1 in^2) / pi)',
      bar_size: '2 * sqrt((1 in^2) / pi)',
      spacing: '4 in',
      width: '12 in',
      E_cm: '(200 GPa) / 9',
      creep: '0',
      f_ct_eff: '400 psi',
      f_yk: '60000 psi',
      duration: 'long',
      w_max: '0.016 in',
    },
    answers: { x: '6.78 in', sigma_s: '18998 psi' },
    tolerance: { relative: 0.0002 },
  },
]
