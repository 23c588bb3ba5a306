import type { PublishedCase } from '../module.ts'

const source =
  'American Institute of Steel Construction, Manual, table of beam diagrams and formulas, uniform load: fractions as printed, times 1000'

/** A span of 1 m under 1000 kN/m^2, so that the coefficients of w l^2 and w l print with enough figures. */
const coefficients = (id: string, ends: string, answers: Readonly<Record<string, string>>): PublishedCase => ({
  id,
  source,
  status: 'memory',
  says: `ends ${ends}`,
  inputs: { span: '1 m', load: '1000 kN/m^2', ends },
  answers,
})

/** The four entries of the table of single spans. */
export const oneWaySlabCases: readonly PublishedCase[] = [
  coefficients('span-simple', 'simple', { M_span: '125.0 kN*m/m', V_left: '500.0 kN/m' }),
  coefficients('span-propped', 'propped', {
    M_sup: '-125.0 kN*m/m',
    M_span: '70.31 kN*m/m',
    x_m: '0.625 m',
    V_left: '625.0 kN/m',
    V_right: '375.0 kN/m',
  }),
  coefficients('span-fixed', 'fixed', { M_sup: '-83.33 kN*m/m', M_span: '41.67 kN*m/m', V_left: '500.0 kN/m' }),
  coefficients('span-cantilever', 'cantilever', { M_sup: '-500.0 kN*m/m', V_left: '1000 kN/m', V_right: '0 kN/m' }),
]
