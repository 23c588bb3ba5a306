import type { CaseInput, PublishedCase } from '../module.ts'

const set: Readonly<Record<string, CaseInput>> = {
  rated_power: '10 MW',
  efficiency: '0.30',
  speed_is: 'steady',
  measured_height: '10 m',
  hub_height: '10 m',
  air_temperature: '15 degC',
  daily_charge: '1 Ah',
  charge_efficiency: '1',
  charge_voltage: '12 V',
  wanted_share: '0',
}
const perArea = (id: string, speed: string, printed: string): PublishedCase => ({
  id,
  source: 'Power of the wind for each area at 1.225 kg/m³, worked by hand',
  status: 'computed',
  says: `${speed} at 15 °C at the sea`,
  inputs: { ...set, diameter: '10 m', speed },
  answers: { rho_a: '1.225 kg/m^3', p_w: printed },
})

/** Textbook examples, and powers worked apart. */
export const windChargeCases: readonly PublishedCase[] = [
  {
    id: 'WT1',
    source:
      'Y. A. Cengel and J. M. Cimbala, Fluid Mechanics, Example 6-5: rotor of 30 ft, 7 mph, air of 0.076 lbm/ft³; 1.225 kW in the wind, 0.4 kW made, 32.7 % (inputs looked up, answers from memory)',
    status: 'memory',
    says: 'power of the wind, and of a rotor that takes 32.7 % of it',
    inputs: { ...set, diameter: '30 ft', speed: '7 mph', density: '0.076 lb/ft^3', efficiency: '0.327' },
    answers: { P_w: '1.225 kW', P_e: '0.4 kW' },
    tolerance: { relative: 0.003 },
  },
  perArea('WT2a', '4 m/s', '39.2 W/m^2'),
  perArea('WT2b', '8 m/s', '313.6 W/m^2'),
  perArea('WT2c', '12 m/s', '1058.4 W/m^2'),
  {
    id: 'WT4',
    source:
      'Worked answer in a public question bank: radius 25 m, 12 m/s, 1.20 kg/m³; 2 034 720 W, printed with pi as 3.14',
    status: 'looked up',
    says: 'power of the wind through a large rotor',
    inputs: {
      ...set,
      diameter: '50 m',
      speed: '12 m/s',
      density: '1.20 kg/m^3',
      hub_height: '40 m',
      measured_height: '40 m',
    },
    answers: { P_w: '2034720 W' },
    tolerance: { relative: 0.001 },
  },
]
