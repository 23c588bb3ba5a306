import type { PublishedCase } from '../module.ts'

const craig = "R. F. Craig, Craig's Soil Mechanics, active thrust on a 5 m wall"
const das = 'B. M. Das, Principles of Foundation Engineering'
const sand = (phi: string) => ({ thickness: '5 m', gamma: '17 kN/m^3', gamma_sat: '20 kN/m^3', phi })

const coulombKa = (phi: string, delta: string, K_a: string): PublishedCase => ({
  id: `ear-3-${phi}-${delta}`,
  source: `${das}, table of Coulomb's active coefficient, vertical wall and level ground`,
  status: 'memory',
  says: `Coulomb's active coefficient, friction ${phi} degrees, wall friction ${delta} degrees`,
  inputs: {
    state: 'active Coulomb',
    layers: [sand(`${phi} deg`)],
    wall_base: '5 m',
    surcharge: '0 kPa',
    delta: `${delta} deg`,
  },
  answers: { K_a_1: K_a },
  tolerance: { units: 1 },
})

/** Published cases of `earth-pressure`; all are recalled, and were recomputed. */
export const earthPressureCases: readonly PublishedCase[] = [
  {
    id: 'ear-1',
    source: `${craig}, dry`,
    status: 'memory',
    says: 'active force of 5 m of dry sand',
    inputs: { state: 'active', layers: [sand('35 deg')], wall_base: '5 m', surcharge: '0 kPa' },
    answers: { P: '57.5 kN/m' },
    tolerance: { units: 2 },
  },
  {
    id: 'ear-2',
    source: `${craig}, water 2 m below the surface`,
    status: 'memory',
    says: 'the same with water 2 m down: sand above, sand below (27.6 + 12.4), water, all',
    inputs: {
      state: 'active',
      layers: [sand('35 deg')],
      wall_base: '5 m',
      surcharge: '0 kPa',
      water_depth: '2 m',
      gamma_w: '9.8 kN/m^3',
    },
    answers: { F_above_1: '9.2 kN/m', F_below_1: '40.0 kN/m', P_water: '44.1 kN/m', P: '93.3 kN/m' },
    tolerance: { units: 1 },
  },
  ...(
    [
      ['0', '0.3610'],
      ['5', '0.3448'],
      ['10', '0.3330'],
      ['15', '0.3251'],
      ['20', '0.3203'],
      ['25', '0.3186'],
    ] as const
  ).map(([delta, K_a]) => coulombKa('28', delta, K_a)),
  {
    id: 'ear-4',
    source: `${das}, table of Rankine's active coefficient with sloping ground`,
    status: 'memory',
    says: "Rankine's active coefficient, friction 30 degrees, ground rising at 10 degrees",
    inputs: { state: 'active', layers: [sand('30 deg')], wall_base: '5 m', surcharge: '0 kPa', alpha: '10 deg' },
    answers: { K_a_1: '0.350' },
  },
  {
    id: 'ear-5',
    source: 'Ingold 1979, equations evaluated by hand',
    status: 'computed',
    says: 'compaction pressure of a roller of 50 kN/m on fill of 18 kN/m³, friction 30 degrees',
    inputs: {
      state: 'active',
      layers: [{ thickness: '5 m', gamma: '18 kN/m^3', gamma_sat: '20 kN/m^3', phi: '30 deg' }],
      wall_base: '5 m',
      surcharge: '0 kPa',
      roller: '50 kN/m',
    },
    // In dry fill without surcharge the pressure of compaction governs down to Ingold's depth h_c.
    answers: { p_least_1: '23.94 kPa', z_kink_above_1: '3.989 m' },
    tolerance: { relative: 0.001 },
  },
]
