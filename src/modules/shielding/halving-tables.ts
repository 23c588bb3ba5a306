import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'

/** Materials of the stack, in the order of the tables' rows. */
export const shieldMaterials = {
  'packed earth': 'soil placed and compacted, about `1600 kg/m^3`',
  concrete: 'ordinary concrete, about `2300 kg/m^3`; reinforcement is not counted',
  steel: 'structural steel',
  lead: 'lead',
  water: 'water that will surely stay',
  brick: 'common solid brick, laid full',
  wood: 'timber; depends much on its density',
} as const

/** Source spectra, each with the published set its halving thicknesses come from. */
export const sourceSpectra = {
  fallout: 'fallout gamma, the thicker published set: Kearny 1987 (read in pages that quote it)',
  'fallout 1962': 'fallout gamma, the thinner set of 1962: Glasstone (from memory; check it against the book)',
  'Cs-137': 'caesium-137, 0.662 MeV, broad beam: ASTM E94',
  'Co-60': 'cobalt-60, 1.17 and 1.33 MeV, broad beam: ASTM E94',
  'Ra-226': 'radium-226 with its daughters, broad beam: US technical order 33B-1-1, Table 6-28',
} as const

/** Photon energies at which the second method can be worked. */
export const photonEnergies = {
  '0.662 MeV': 'caesium-137; near the mean of fallout gamma behind little cover',
  '1 MeV': 'between the mean and the hard part of fallout gamma',
  '1.25 MeV': 'cobalt-60; the least that is safe for fallout behind deep cover',
  '2 MeV': 'the hard part of fallout gamma, which is what is left behind deep cover',
} as const

const rows = (says: string): Axis => ({ kind: 'words', says, keys: Object.keys(shieldMaterials) })
const energies = (says: string): Axis => ({ kind: 'words', says, keys: Object.keys(photonEnergies) })

/** Halving thickness by material and source spectrum, mm, broad beam: build-up is in it. */
export const halvingThickness = table(
  {
    title: 'Halving thicknesses, broad beam, by source spectrum',
    source: cite('halving-data'),
    status:
      'fallout: read in pages that quote the book; fallout 1962: from memory (both printed in inches, exact in mm here); Cs-137, Co-60 and Ra-226: looked up in reprints',
    unit: 'mm',
    row: rows('material'),
    column: { kind: 'words', says: 'source spectrum', keys: Object.keys(sourceSpectra) },
  },
  `
   91.44   83.82  -     -     -
   60.96   55.88  48    66    68.6
   25.4    17.78  -     22    22.4
   10.16   -      6.35  12.4  16.6
  182.88  121.92  -     -     -
   86.36   -      -     -     -
  279.4   223.52  -     -     -
  `,
)

/** Nominal density by material, kg/m^3: not published with the halving thicknesses; only the second method uses it. */
export const nominalDensity = table(
  {
    title: 'Nominal densities',
    source: cite('practice'),
    status: 'common values from memory; placed soil and timber vary by a fifth',
    unit: 'kg/m^3',
    row: rows('material'),
  },
  '1600\n2300\n7850\n11340\n1000\n1800\n550',
)

/** Photon mass attenuation coefficient by material and energy, cm^2/g, with coherent scattering. */
export const massAttenuation = table(
  {
    title: 'Photon mass attenuation coefficients',
    source: cite('nist-xaamdi', 'tables 3 and 4'),
    status:
      'looked up for concrete, iron (as steel), lead and water; earth by mixture; 0.662 MeV log-log between the printed 0.6 and 0.8 MeV; brick and wood taken as concrete',
    unit: 'cm^2/g',
    row: rows('material'),
    column: energies('photon energy'),
  },
  `
  0.07880  0.06500  0.05811  0.04557
  0.07876  0.06495  0.05807  0.04557
  0.07345  0.05995  0.05350  0.04265
  0.1111   0.07102  0.05876  0.04606
  0.08567  0.07072  0.06323  0.04942
  0.07876  0.06495  0.05807  0.04557
  0.07876  0.06495  0.05807  0.04557
  `,
)

const fitStatus =
  'our own fit of the Berger form to build-up factors computed by Monte Carlo for concrete, 1 to 10 mean free paths, within 5.2 %; not a published parameter'

/** First Berger parameter of concrete's exposure build-up factor. */
export const bergerC = table(
  {
    title: 'Build-up in concrete, Berger form, factor C',
    source: cite('buildup-concrete'),
    status: fitStatus,
    unit: '',
    row: energies('photon energy'),
  },
  '1.1583\n1.0278\n0.9362\n0.7940',
)

/** Second Berger parameter of concrete's exposure build-up factor. */
export const bergerD = table(
  {
    title: 'Build-up in concrete, Berger form, exponent D',
    source: cite('buildup-concrete'),
    status: fitStatus,
    unit: '',
    row: energies('photon energy'),
  },
  '0.0979\n0.0661\n0.0607\n0.0359',
)
