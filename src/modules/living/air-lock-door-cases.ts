import type { CaseInput, PublishedCase } from '../module.ts'

const door = (more: Readonly<Record<string, CaseInput>>): Readonly<Record<string, CaseInput>> => ({
  width: '0.9 m',
  height: '2 m',
  thickness: '10 mm',
  design_pressure: '10 kPa',
  strength: '235 MPa',
  bending_limit: '5 mm',
  difference: '50 Pa',
  opens: 'against the pressure',
  closer: '30 N',
  handle: '75 mm',
  gap: '1 mm',
  leak_limit: '0.1 m^3/s',
  ...more,
})
const printed = (id: string, closer: string, width: string, answer: string): PublishedCase => ({
  id,
  source:
    'A smoke-control manual after the ASHRAE book on smoke control: largest pressure difference for 30 lbf at a door 7 ft high, handle 3 in from its edge',
  status: 'looked up',
  says: `closer of ${closer}, ${width} wide`,
  inputs: door({ closer, width, height: '7 ft', handle: '3 in' }),
  answers: { dp_max: answer },
})
const plate = (id: string, height: string, factors: Readonly<Record<string, string>>): PublishedCase => ({
  id,
  source: "Roark's Formulas for Stress and Strain, Table 11.4, case 1a",
  status: 'looked up',
  says: `plate 1 m wide and ${height} high`,
  inputs: door({ width: '1 m', height }),
  answers: factors,
})
const orifice = (id: string, difference: string, answer: string): PublishedCase => ({
  id,
  source: 'Orifice formula by hand: 10 cm², coefficient 0.61, 1.2 kg/m³',
  status: 'computed',
  says: `leak at ${difference}`,
  inputs: door({ difference, gap: '0.001 m^2 / (5.8 m)', discharge: '0.61' }),
  answers: { Q_leak: answer },
})

/** Printed pressure differences at doors, plate factors, and the orifice by hand. */
export const airLockDoorCases: readonly PublishedCase[] = [
  printed('K1', '6 lbf', '36 in', '0.40 inH2O'),
  printed('K2', '14 lbf', '48 in', '0.21 inH2O'),
  printed('K3', '12 lbf', '44 in', '0.25 inH2O'),
  plate('K4a', '1 m', { beta: '0.2874', alpha: '0.0444' }),
  plate('K4b', '1.4 m', { beta: '0.4530', alpha: '0.0770' }),
  plate('K4c', '2 m', { beta: '0.6102', alpha: '0.1110' }),
  orifice('K8a', '10 Pa', '2.490 L/s'),
  orifice('K8b', '50 Pa', '5.569 L/s'),
  orifice('K8c', '250 Pa', '12.452 L/s'),
]
