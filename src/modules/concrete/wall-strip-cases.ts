import type { CaseInput, PublishedCase } from '../module.ts'

const source = 'Statics of one span under uniform and triangular load, worked apart'
const manual =
  'American Institute of Steel Construction, Manual, table of beam diagrams and formulas: fractions and decimals as printed, times 1000'
const roark = "Roark's Formulas for Stress and Strain, 7th ed., Table 8.1, increasing load: as printed, times 1000"
const thickness = '300 mm'

type Ends = readonly [base: string, top: string]

/** H = 1 m and p = 1000 kPa at the largest, so that the coefficients of p H and p H^2 print with enough figures. */
const coefficients = (
  id: string,
  [base, top]: Ends,
  asked: {
    readonly load: 'uniform' | 'triangular'
    readonly answers: Readonly<Record<string, string>>
    readonly printed: string
  },
): PublishedCase => ({
  id,
  source: asked.printed,
  status: asked.printed === source ? 'computed' : 'memory',
  says: `${asked.load} load, ${base} base, ${top} top`,
  inputs: { height: '1 m', diagram: loadOf(asked.load), base, top, thickness },
  answers: asked.answers,
})

const loadOf = (load: 'uniform' | 'triangular'): CaseInput => [
  { z: '0 m', p: load === 'uniform' ? '1000 kPa' : '0 kPa' },
  { z: '1 m', p: '1000 kPa' },
]

/** Entries of tables of single spans (the recalled 0.0215 of Roark for both ends fixed does not close: 0.02144), and four worked strips. */
export const wallStripCases: readonly PublishedCase[] = [
  coefficients('ends-1', ['pinned', 'pinned'], {
    printed: manual,
    load: 'uniform',
    answers: { M_span: '125.0 kN*m/m', z_m: '0.5000 m', R_base: '500.0 kN/m', R_top: '500.0 kN/m' },
  }),
  coefficients('ends-2', ['pinned', 'pinned'], {
    printed: manual,
    load: 'triangular',
    answers: { M_span: '64.15 kN*m/m', z_m: '0.5774 m', R_base: '333.3 kN/m', R_top: '166.7 kN/m' },
  }),
  coefficients('ends-3', ['fixed', 'pinned'], {
    printed: manual,
    load: 'uniform',
    answers: {
      M_base: '-125.0 kN*m/m',
      M_span: '70.31 kN*m/m',
      z_m: '0.3750 m',
      R_base: '625.0 kN/m',
      R_top: '375.0 kN/m',
    },
  }),
  coefficients('ends-4', ['fixed', 'pinned'], {
    printed: roark,
    load: 'triangular',
    answers: {
      M_base: '-66.67 kN*m/m',
      M_span: '29.8 kN*m/m',
      z_m: '0.447 m',
      R_base: '400.0 kN/m',
      R_top: '100.0 kN/m',
    },
  }),
  coefficients('ends-5', ['fixed', 'fixed'], {
    printed: manual,
    load: 'uniform',
    answers: { M_base: '-83.33 kN*m/m', M_top: '-83.33 kN*m/m', M_span: '41.67 kN*m/m', R_base: '500.0 kN/m' },
  }),
  coefficients('ends-6', ['fixed', 'fixed'], {
    printed: roark,
    load: 'triangular',
    answers: {
      M_base: '-50.00 kN*m/m',
      M_top: '-33.33 kN*m/m',
      z_m: '0.548 m',
      R_base: '350.0 kN/m',
      R_top: '150.0 kN/m',
    },
  }),
  coefficients('ends-6a', ['fixed', 'fixed'], {
    printed: source,
    load: 'triangular',
    answers: { M_span: '21.44 kN*m/m', z_m: '0.5477 m' },
  }),
  coefficients('ends-7', ['fixed', 'free'], {
    printed: manual,
    load: 'uniform',
    answers: { M_base: '-500.0 kN*m/m', R_base: '1000 kN/m' },
  }),
  coefficients('ends-8', ['fixed', 'free'], {
    printed: manual,
    load: 'triangular',
    answers: { M_base: '-166.7 kN*m/m', R_base: '500.0 kN/m' },
  }),
  {
    id: 'strip-1',
    source,
    status: 'computed',
    says: 'height 3 m, triangular 30 kPa, fixed base, pinned top',
    inputs: {
      height: '3 m',
      diagram: [
        { z: '0 m', p: '0 kPa' },
        { z: '3 m', p: '30 kPa' },
      ],
      base: 'fixed',
      top: 'pinned',
      thickness,
    },
    answers: { M_base: '-18.0 kN*m/m', M_span: '8.05 kN*m/m', R_base: '36.0 kN/m', R_top: '9.0 kN/m' },
    tolerance: { relative: 0.002 },
  },
  {
    id: 'strip-2',
    source,
    status: 'computed',
    says: 'height 3 m, triangular 30 kPa, pinned at both ends',
    inputs: {
      height: '3 m',
      diagram: [
        { z: '0 m', p: '0 kPa' },
        { z: '3 m', p: '30 kPa' },
      ],
      base: 'pinned',
      top: 'pinned',
      thickness,
    },
    answers: { M_span: '17.32 kN*m/m', z_m: '1.732 m', R_base: '30 kN/m', R_top: '15 kN/m' },
    tolerance: { relative: 0.002 },
  },
  {
    id: 'strip-3',
    source,
    status: 'computed',
    says: 'height 2.5 m, uniform 10 kPa and triangular 25 kPa, fixed at both ends',
    inputs: {
      height: '2.5 m',
      diagram: [
        { z: '0 m', p: '10 kPa' },
        { z: '2.5 m', p: '35 kPa' },
      ],
      base: 'fixed',
      top: 'fixed',
      thickness,
    },
    answers: { M_base: '-13.02 kN*m/m', M_top: '-10.42 kN*m/m', R_base: '34.375 kN/m', R_top: '21.875 kN/m' },
    tolerance: { relative: 0.002 },
  },
  {
    id: 'strip-4',
    source,
    status: 'computed',
    says: 'height 2 m, triangular 20 kPa, cantilever',
    inputs: {
      height: '2 m',
      diagram: [
        { z: '0 m', p: '0 kPa' },
        { z: '2 m', p: '20 kPa' },
      ],
      base: 'fixed',
      top: 'free',
      thickness,
    },
    answers: { M_base: '-13.33 kN*m/m', R_base: '20 kN/m' },
    tolerance: { relative: 0.001 },
  },
]
