import type { PublishedCase } from '../module.ts'

const slab = {
  load: '100 kN',
  place: 'inside',
  side_1: '300 mm',
  side_2: '300 mm',
  depth_1: '200 mm',
  depth_2: '200 mm',
  steel_1: '0.5 percent',
  steel_2: '0.5 percent',
  f_ck: '30 MPa',
}

const ofTable7 = (depth: string, steel: string, printed: string): PublishedCase => ({
  id: `punch-${depth}-${steel}`.replaceAll(' ', ''),
  source: 'The Concrete Centre, How to design concrete structures using Eurocode 2, table 7, 30 MPa',
  status: 'looked up',
  says: `effective depth ${depth}, steel ${steel} both ways`,
  inputs: { ...slab, depth_1: depth, depth_2: depth, steel_1: steel, steel_2: steel },
  answers: { v_Rd_c: printed },
})

const perimeter = (place: string, printed: string): PublishedCase => ({
  id: `punch-${place}`,
  source: 'EN 1992-1-1, Fig. 6.13 and 6.15, lengths added up by hand: sides 300 mm, depth 200 mm, flush with the edges',
  status: 'computed',
  says: `straight parts and arcs of 400 mm, ${place}`,
  inputs: { ...slab, place },
  answers: { u_1: printed },
})

/** A worked column, the table of stresses, and perimeters by hand. */
export const punchingCases: readonly PublishedCase[] = [
  {
    id: 'punch-column',
    source: 'The Concrete Centre, Worked examples to Eurocode 2, volume 1, flat slab, punching at the central column',
    status: 'memory',
    says: 'column of 400 mm, depths 260 and 240 mm, steel 0.85 and 0.48 percent, 1204.8 kN',
    inputs: {
      load: '1204.8 kN',
      place: 'inside',
      side_1: '400 mm',
      side_2: '400 mm',
      depth_1: '260 mm',
      depth_2: '240 mm',
      steel_1: '0.85 percent',
      steel_2: '0.48 percent',
      f_ck: '30 MPa',
    },
    answers: { u_0: '1600 mm', v_0: '3.46 MPa', v_1: '1.17 MPa', v_Rd_c: '0.61 MPa' },
  },
  ofTable7('200 mm', '0.5 percent', '0.59 MPa'),
  ofTable7('300 mm', '1 percent', '0.68 MPa'),
  perimeter('inside', '3713 mm'),
  perimeter('edge', '2157 mm'),
  perimeter('corner', '1228 mm'),
]
