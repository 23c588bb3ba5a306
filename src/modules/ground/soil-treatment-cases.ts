import type { CaseInput, PublishedCase } from '../module.ts'

const rest: Readonly<Record<string, CaseInput>> = {
  dose: '0.05',
  spare: '0',
  nearest: '50 m',
  keep_away: '30 m',
  ground: 'moist',
}

/** Published cases of `soil-treatment`. */
export const soilTreatmentCases: readonly PublishedCase[] = [
  {
    id: 'tre-1',
    source: 'Rates of IS 6313 Part 2 as contractors publish them: 5 L/m² under a raft, 2.25 L/m round the outside',
    status: 'looked up',
    says: 'raft of 8 m by 6 m, perimeter of 28 m, 50 mL of product in each litre',
    inputs: {
      ...rest,
      areas: [{ area: '8 m * 6 m', rate: '5 L/m^2' }],
      edges: [{ run: '28 m', edge_rate: '2.25 L/m' }],
    },
    answers: { V_area_1: '240 L', V_edge_1: '63 L', V_mix: '303 L', V_product: '15.15 L' },
  },
  {
    id: 'tre-3',
    source: 'Answer page of a supplier: 4 US gallons for each 10 ft round 180 ft (one foot deep is our reading)',
    status: 'looked up',
    says: 'perimeter of 180 ft',
    inputs: {
      ...rest,
      areas: [{ area: '100 ft^2', rate: '1 gal / (10 ft^2)' }],
      edges: [{ run: '180 ft', edge_rate: '4 gal / (10 ft)' }],
    },
    answers: { V_edge_1: '72 gal' },
  },
]
