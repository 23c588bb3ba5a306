import { cite } from '../sources.ts'
import { type Axis, type Table, table } from '../table.ts'
import { bergerC, bergerD, photonEnergies } from './halving-tables.ts'

/** What scatters: the material whose build-up factor stands for the whole stack. */
export const buildUpMedia = {
  concrete: 'concrete; soil, brick and wood may share it',
  water: 'water, the largest of the three',
  iron: 'iron, for steel',
  none: 'no build-up: narrow beam, unsafe for people, for comparison only',
} as const

/** What is known of the fits past their range, as a caution. Held by a test against the factors of `build-up-deep.csv`. */
export const beyondTheFit =
  'The build-up is fitted to 10 mean free paths. From 12 to 20 the fit lies above factors computed apart, by 1 to 120 %, and above the older tables (from memory): more comes through by it.'

const energies: Axis = { kind: 'words', says: 'photon energy', keys: Object.keys(photonEnergies) }
const media: Axis = { kind: 'words', says: 'material of the build-up', keys: Object.keys(buildUpMedia) }
const fitted =
  'our own fit of the Berger form to build-up factors computed by Monte Carlo, 1 to 10 mean free paths, within 8.5 %; not a published parameter'
const inAir =
  'the fit for water stands for air, whose atoms scatter much alike; over the one metre of air used here it counts little'

const alongRow = ({ cells }: Table): readonly string[] => cells.map(row => row[0] ?? '')
const nothing = energies.keys.map(() => '0')

/** The concrete row is that of `halving-layers`; the row `none` is 0 by its meaning. */
function berger(part: string, concrete: Table, rows: { water: string; iron: string; air?: true }): Table {
  const water = rows.water.split(' ')
  return {
    title: rows.air ? `Build-up in air, Berger form, ${part}` : `Build-up, Berger form, ${part}`,
    source: cite('buildup-media'),
    status: rows.air ? inAir : fitted,
    unit: '',
    row: media,
    column: energies,
    cells: rows.air ? [water, water, water, nothing] : [alongRow(concrete), water, rows.iron.split(' '), nothing],
  }
}

const C = { water: '1.3159 1.1254 1.0213 0.8658', iron: '0.9149 0.8461 0.8158 0.7097' }
const D = { water: '0.1237 0.0820 0.0683 0.0308', iron: '0.0723 0.0598 0.0487 0.0376' }

/** Berger factor C and exponent D by material and energy, for the stack and for the metre of open air. */
export const stackC = berger('factor C', bergerC, C)
export const stackD = berger('exponent D', bergerD, D)
export const airC = berger('factor C', bergerC, { ...C, air: true })
export const airD = berger('exponent D', bergerD, { ...D, air: true })

/** Mass attenuation coefficient of dry air, cm^2/g. */
export const airAttenuation = table(
  {
    title: 'Photon mass attenuation coefficients of dry air',
    source: cite('nist-xaamdi', 'table 4'),
    status: 'looked up; 0.662 MeV log-log between the printed 0.6 and 0.8 MeV',
    unit: 'cm^2/g',
    row: energies,
  },
  '0.07705\n0.06358\n0.05687\n0.04447',
)

/** Mass energy-absorption coefficient of dry air, cm^2/g. */
export const airAbsorption = table(
  {
    title: 'Photon mass energy-absorption coefficients of dry air',
    source: cite('nist-xaamdi', 'table 4'),
    status: 'looked up; 0.662 MeV log-log between the printed 0.6 and 0.8 MeV',
    unit: 'cm^2/g',
    row: energies,
  },
  '0.02929\n0.02789\n0.02666\n0.02345',
)

/** Energy of one photon, MeV. */
export const photonEnergy = table(
  {
    title: 'Photon energies',
    source: cite('nist-xaamdi'),
    status: 'the names of the energies as numbers',
    unit: 'MeV',
    row: energies,
  },
  '0.662\n1\n1.25\n2',
)
