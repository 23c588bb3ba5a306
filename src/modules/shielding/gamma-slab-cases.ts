import type { CaseInput, PublishedCase } from '../module.ts'

const concrete = (thickness: string): Readonly<Record<string, CaseInput>> => ({
  layers: [{ material: 'concrete', thickness }],
  energy: '1 MeV',
})
/** Concrete of so many mean free paths at 1 MeV. */
const paths = (count: string) => concrete(`${count} / (0.06495 cm^2/g * 2300 kg/m^3)`)

const overPlane = (id: string, count: string, answer: string): PublishedCase => ({
  id,
  source: 'Half the exponential integral, integrated numerically over the plane',
  status: 'computed',
  says: `plane source without build-up, ${count} mean free paths`,
  inputs: { ...paths(count), build_up: 'none' },
  answers: { f_slab: answer },
  tolerance: { relative: 1e-6 },
})

const slab = (id: string, mass: string, energy: string, factor: string): PublishedCase => ({
  id,
  source: 'Protection of a slab without end over 1 m in the open, tabulated for this project by the same kernel',
  status: 'computed',
  says: `\`${mass}\` of concrete under a plane at ${energy}`,
  inputs: { layers: [{ material: 'concrete', thickness: `${mass} / (2300 kg/m^3)` }], energy },
  answers: { P: factor },
})

/** Handbook figures, integrals worked apart, and slabs under a plane source. */
export const gammaSlabCases: readonly PublishedCase[] = [
  {
    id: 'GS-1',
    source: 'NIST SRD 126, ordinary concrete at 1 MeV, 2300 `kg/m^3`: half of a narrow beam is left behind 4.640 cm',
    status: 'looked up',
    says: 'narrow beam through one halving of concrete',
    inputs: { ...concrete('4.640 cm'), source: 'beam', build_up: 'none' },
    answers: { T: '0.5000' },
    tolerance: { relative: 0.001 },
  },
  overPlane('GS-6a', '0.5', '0.2798868'),
  overPlane('GS-6b', '1', '0.1096920'),
  overPlane('GS-6c', '3', '6.524191e-3'),
  overPlane('GS-6d', '6', '1.800412e-4'),
  {
    id: 'GS-8',
    source: 'Plane source with the Berger form 1.0278 and 0.0661, integrated numerically over the plane',
    status: 'computed',
    says: 'plane source with build-up, 5 mean free paths of concrete at 1 MeV',
    inputs: paths('5'),
    answers: { f_slab: '5.734034e-3' },
    tolerance: { relative: 1e-6 },
  },
  {
    id: 'GS-10',
    source: 'Disc of three times the thickness of the slab, integrated numerically over the disc',
    status: 'computed',
    says: 'disc source without build-up, 2 mean free paths',
    inputs: { ...paths('2'), build_up: 'none', radius: '3 * 2 / (0.06495 cm^2/g * 2300 kg/m^3)' },
    answers: { f_slab: '0.02432605' },
    tolerance: { relative: 1e-6 },
  },
  {
    id: 'GS-11',
    source: 'Beam through 500 mm of concrete at 1 MeV, Berger form 1.0278 and 0.0661, worked by hand',
    status: 'computed',
    says: '500 mm of concrete in a beam of 1 MeV',
    inputs: { ...concrete('500 mm'), source: 'beam' },
    answers: { b: '7.46925', T: '7.74417e-3' },
    tolerance: { relative: 1e-4 },
  },
  {
    id: 'GS-14',
    source: 'Air kerma rate of 1 photon per square centimetre and second at 1 MeV, from the NIST coefficient',
    status: 'computed',
    says: 'a beam of 1 MeV with nothing in its way',
    inputs: { ...concrete('0 mm'), source: 'beam', strength: '1 Bq/cm^2' },
    answers: { K_air: '1.60865e-8 Gy/hr' },
    tolerance: { relative: 1e-4 },
  },
  slab('RP-250', '250 kg/m^2', '1 MeV', '17.0'),
  slab('RP-500', '500 kg/m^2', '1.25 MeV', '69'),
  slab('RP-750', '750 kg/m^2', '0.662 MeV', '845'),
  slab('RP-1000', '1000 kg/m^2', '2 MeV', '458'),
]
