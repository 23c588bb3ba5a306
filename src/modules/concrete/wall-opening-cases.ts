import type { PublishedCase } from '../module.ts'

const sleeve = {
  shape: 'round',
  width: '450 mm',
  height: '450 mm',
  vertical_bar: '12 mm',
  vertical_spacing: '200 mm',
  horizontal_bar: '12 mm',
  horizontal_spacing: '200 mm',
  bar_size: '12 mm',
  upright_bars: '2',
  level_bars: '2',
  anchorage: '500 mm',
  room_beside: '800 mm',
  room_above: '600 mm',
  least_rule: 'none',
}

/** A sleeve of 450 mm worked apart, a sleeve that passes between bars, and the least bars of ACI 318. */
export const wallOpeningCases: readonly PublishedCase[] = [
  {
    id: 'open-1',
    source: 'Replacement of the bars cut, counted apart: bars of 12 mm at 200 mm, sleeve of 450 mm, anchorage 500 mm',
    status: 'computed',
    says: 'three bars cut at a face in each direction, half of their steel each side, bars of 1450 mm',
    inputs: sleeve,
    answers: {
      n_cut_v: '3',
      A_cut_v: '339.3 mm^2',
      A_side_v: '169.6 mm^2',
      A_cut_h: '339.3 mm^2',
      L_v: '1450 mm',
      L_h: '1450 mm',
    },
  },
  {
    id: 'open-2',
    source: 'Identity: an opening that leaves 50 mm clear to the bars on both sides cuts none',
    status: 'computed',
    says: 'a sleeve of 80 mm between bars at 200 mm',
    inputs: { ...sleeve, width: '80 mm', height: '80 mm', upright_bars: '0', level_bars: '0' },
    answers: { A_cut_v: '0 mm^2', A_side_h: '0 mm^2', L_v: '1080 mm' },
  },
  {
    id: 'open-3',
    source: 'ACI 318-19, 11.7.5.1: two No. 5 round openings of walls with two layers, one at each face',
    status: 'memory',
    says: 'least steel at each side and face',
    inputs: { ...sleeve, bar_size: 'No. 5', upright_bars: '1', least_rule: 'ACI 318' },
    answers: { A_side_v: '0.31 in^2' },
  },
]
