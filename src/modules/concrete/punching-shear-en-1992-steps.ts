import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { table } from '../table.ts'
import { check, look, step, when } from '../words.ts'
import { placeWords } from './punching-shear-en-1992-inputs.ts'
import { crackedFactor, designStrength, stressesCarried } from './shear-stress-en-1992.ts'

const size = { SI: 'mm', US: 'in' }
const stress = { SI: 'MPa', US: 'psi' }
const clause = (at: string) => cite('en-1992-1-1', at)

const unevenness = table(
  {
    title: 'Factor for uneven shear',
    source: clause('6.4.3(6), recommended'),
    status: 'from memory of the standard; 1 for a load without a moment',
    unit: '',
    row: { kind: 'words', says: 'where the load stands', keys: Object.keys(placeWords) },
  },
  '1.0 \n 1.15 \n 1.4 \n 1.5',
)

const atEdge = (across: '1' | '2', along: '1' | '2'): string =>
  `2 * (side_${across} + edge_${across}) + side_${along} + 2 * pi * d`
const counted = (formula: string, at: string): Step =>
  step('u_1', formula, { says: 'control perimeter that counts', unit: size, source: clause(at) })
const area = (formula: string): Step =>
  step('u_0', formula, { says: 'perimeter of the loaded area', unit: size, source: clause('6.4.5(3)') })

/** Perimeters by the place of the load: that of the loaded area, and that twice the depth away. */
const perimeters: readonly Step[] = [
  step('d', '(depth_1 + depth_2) / 2', {
    says: 'effective depth, mean of both ways',
    unit: size,
    source: clause('Eq. 6.32'),
  }),
  step('u_in', '2 * (side_1 + side_2) + 4 * pi * d', {
    says: 'perimeter twice the depth away, were there no edge',
    unit: size,
    source: clause('6.4.2(1)'),
  }),
  when(
    { choice: 'place', is: ['edge'] },
    {
      yes: [counted(`min(u_in, ${atEdge('1', '2')})`, '6.4.2(4)'), area('min(side_2 + 3 * d, side_2 + 2 * side_1)')],
      no: [
        when(
          { choice: 'place', is: ['corner'] },
          {
            yes: [
              step('u_e', `min(${atEdge('1', '2')}, ${atEdge('2', '1')})`, {
                says: 'perimeter that ends at one of the edges',
                unit: size,
                source: clause('6.4.2(4)'),
              }),
              counted('min(u_in, u_e, side_1 + edge_1 + side_2 + edge_2 + pi * d)', '6.4.2(4)'),
              area('min(3 * d, side_1 + side_2)'),
            ],
            no: [counted('u_in', '6.4.2(1)'), area('2 * (side_1 + side_2)')],
          },
        ),
      ],
    },
  ),
  look('beta', unevenness, { row: 'place', says: 'factor for uneven shear', symbol: 'beta_v' }),
]

const crushing: readonly Step[] = [
  step('v_0', 'beta * load / (u_0 * d)', {
    says: 'shear stress round the loaded area',
    unit: stress,
    source: clause('Eq. 6.53'),
  }),
  designStrength,
  crackedFactor,
  step('v_max', '0.4 * nu * f_cd', {
    says: 'shear stress at which the concrete crushes',
    symbol: 'v_Rd_max',
    unit: stress,
    source: clause('6.4.5(3), A1:2014'),
  }),
  check('crushing', 'v_0 <= v_max', {
    says: 'the concrete does not crush round the loaded area',
    source: clause('6.4.3(2)'),
  }),
]

const punching: readonly Step[] = [
  step('v_1', 'beta * load / (u_1 * d)', {
    says: 'shear stress on the control perimeter',
    unit: stress,
    source: clause('Eq. 6.38'),
  }),
  ...stressesCarried({ depth: 'd', ratio: 'sqrt(steel_1 * steel_2)', at: '6.4.4(1)', equation: '6.47' }),
  step('v_Rd_c', 'max(v_steel, v_min)', {
    says: 'shear stress that concrete without shear steel carries',
    unit: stress,
    source: clause('Eq. 6.47'),
  }),
  check('no_links', 'v_1 <= v_Rd_c', { says: 'the slab needs no punching steel', source: clause('6.4.3(2)') }),
  step('F_Rd', 'min(v_Rd_c * u_1, v_max * u_0) * d / beta', {
    says: 'largest load that needs no punching steel',
    unit: { SI: 'kN', US: 'kip' },
    source: clause('6.4.3'),
  }),
]

/** Punching by EN 1992-1-1 6.4: perimeters, crushing round the load, and the control perimeter. */
export const punchingSteps: readonly Step[] = [...perimeters, ...crushing, ...punching]
