import type { CaseInput, PublishedCase } from '../module.ts'

const plain = {
  side: 'intake',
  entrance: 'none',
  bend: 'smooth',
  bends: '0',
  outlet: 'none',
  other: '0',
} as const

const one = (
  duct: Readonly<Record<string, string>>,
  flow: string,
  more: Readonly<Record<string, CaseInput>> = {},
): Readonly<Record<string, CaseInput>> => ({
  ducts: [{ ...plain, ...duct }],
  flow,
  filter_loss: '0 Pa',
  filter_flow: '1 m^3/s',
  valve: '0 Pa',
  overpressure: '0 Pa',
  blower_efficiency: '0.5',
  motor_efficiency: '0.5',
  voltage: '12 V',
  crank_efficiency: '0.8',
  crankers: '4 person',
  ...more,
})

const library = 'open-source fluids library, friction factor of Colebrook to many digits, and of Haaland'
/** A bore of 0.1 m, and the flow at which its Reynolds number is 100 000. */
const at1e5 = (roughness: string) =>
  one({ bore: '0.1 m', run: '1 m', roughness }, '15 m/s * pi / 4 * (0.1 m)^2', { viscosity: '1.5e-5 m^2/s' })

/** Friction of Colebrook and Haaland, and a duct of air from a textbook. */
export const ductLossCases: readonly PublishedCase[] = [
  {
    id: 'D2',
    source:
      'Y. A. Cengel and J. M. Cimbala, Fluid Mechanics, Example 8-4: smooth duct of 0.267 m, 0.35 m³/s of air at 35 °C (inputs looked up, answers from memory)',
    status: 'memory',
    says: 'speed, Reynolds number and friction factor of a plastic duct',
    inputs: one({ bore: '0.267 m', run: '150 m', roughness: '0 mm' }, '0.35 m^3/s', {
      density: '1.145 kg/m^3',
      viscosity: '1.655e-5 m^2/s',
    }),
    answers: { v_1: '6.24 m/s', Re_1: '100800', f_d_1: '0.0180' },
    tolerance: { relative: 0.005 },
  },
  {
    id: 'D5',
    source: library,
    status: 'looked up',
    says: 'friction factors at a Reynolds number of 100 000 and a relative roughness of 0.0001',
    inputs: at1e5('0.01 mm'),
    answers: { f_d_1: '0.018513866077', f_h_1: '0.018265' },
  },
  {
    id: 'D6',
    source: library,
    status: 'looked up',
    says: 'friction factor of a smooth pipe at a Reynolds number of 100 000',
    inputs: at1e5('0 mm'),
    answers: { f_d_1: '0.01799' },
  },
  {
    id: 'D9',
    source: 'Swiss shelter practice: room overpressure held by the exhaust valve and what lies behind it; sum by hand',
    status: 'computed',
    says: 'a filter of 250 Pa at twice the flow, a valve of 100 Pa and no friction',
    inputs: one({ bore: '2 m', run: '0 m', roughness: '0 mm' }, '0.1 m^3/s', {
      filter_loss: '500 Pa',
      filter_flow: '0.2 m^3/s',
      valve: '100 Pa',
    }),
    answers: { dp_all: '350 Pa', P_air: '35 W', P_shaft: '70 W', P_el: '140 W', P_hand: '21.875 W/person' },
  },
]
