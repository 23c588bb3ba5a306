import type { CaseInput, PublishedCase } from '../module.ts'

const pump = (more: Readonly<Record<string, CaseInput>>): Readonly<Record<string, CaseInput>> => ({
  cylinder: 'in the water',
  altitude: '0 m',
  water_temperature: '10 degC',
  suction: '0 m',
  suction_loss: '0 m',
  head: '30 m',
  bore: '63.5 mm',
  stroke: '125 mm',
  rate: '40',
  slip: '1',
  lever: '8',
  efficiency: '1',
  rod_weight: '0 N',
  force_limit: '250 N',
  pumpers: '1 person',
  person_power: '75 W/person',
  daily_water: '500 L',
  daily_time: '4 hr',
  density: '1000 kg/m^3',
  ...more,
})
const atmosphere = (id: string, altitude: string, answer: string): PublishedCase => ({
  id,
  source: 'US Standard Atmosphere 1976',
  status: 'looked up',
  says: `air pressure at ${altitude}`,
  inputs: pump({ altitude }),
  answers: { p_a: answer },
  tolerance: { relative: 0.00001 },
})
const mark = 'India Mark II hand pump, stroke 125 mm, cylinder 63.5 mm, 75 W (hand-pump encyclopaedia)'

/** The standard atmosphere, the limit of suction, and a pump whose data are published. */
export const handPumpCases: readonly PublishedCase[] = [
  atmosphere('U1a', '2000 m', '79501 Pa'),
  atmosphere('U1b', '4000 m', '61660 Pa'),
  {
    id: 'U2a',
    source: 'Air pressure less the vapour pressure of IAPWS, over the weight of water, by hand',
    status: 'computed',
    says: 'greatest lift at the sea, water of 10 °C',
    inputs: pump({ density: '999.65 kg/m^3' }),
    answers: { h_t: '10.211 m' },
    tolerance: { relative: 0.001 },
  },
  {
    id: 'U2b',
    source: 'Air pressure less the vapour pressure of IAPWS, over the weight of water, by hand',
    status: 'computed',
    says: 'greatest lift at 2000 m, water of 20 °C',
    inputs: pump({ altitude: '2000 m', water_temperature: '20 degC', density: '998.16 kg/m^3' }),
    answers: { h_t: '7.883 m' },
    tolerance: { relative: 0.001 },
  },
  {
    id: 'U3',
    source: mark,
    status: 'looked up',
    says: 'water raised from 50 m',
    inputs: pump({ head: '50 m' }),
    answers: { Q_p: '0.55 m^3/hr' },
  },
  {
    id: 'U4',
    source: `${mark}; the printed figure is rounded down from 0.459`,
    status: 'looked up',
    says: 'water raised from 60 m',
    inputs: pump({ head: '60 m' }),
    answers: { Q_p: '0.45 m^3/hr' },
    tolerance: { relative: 0.03 },
  },
  {
    id: 'U6',
    source: 'Cylinder and lever by hand: 63.5 by 125 mm, 40 strokes, 30 m, lever 8',
    status: 'computed',
    says: 'stroke volume, water raised, force in rod and handle',
    inputs: pump({}),
    answers: { V_1: '0.39587 L', Q_h: '15.83 L/min', F_r: '931.7 N', F_h: '116.5 N' },
  },
]
