import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { check, each, pairs, step, take, when } from '../words.ts'

export const areaLoad = { SI: 'kPa', US: 'psf' }

/** Over how many spans a beam runs. */
export const beamEnds = {
  'one or two': 'one span, or two',
  'three or more': 'three equal spans or more',
} as const

const aci = (at: string) => cite('aci-347', at)
const statics = cite('statics', 'beams of equal spans')
const force = { SI: 'kN', US: 'lbf' }
const moment = { SI: 'kN*m', US: 'lbf*ft' }

const load = (name: string, formula: string, says: string, source: Citation): Step =>
  step(name, formula, { says, unit: areaLoad, source })
const least = (live: string, all: string): readonly Step[] => [
  load('w_L', live, 'live load of the work', aci('4.2.1')),
  load('w_least', all, 'least load in all', aci('4.2.1')),
]

const loads: readonly Step[] = [
  load('w_D', 'unit_weight * thickness + forms_weight', 'dead load', cite('statics')),
  when({ choice: 'carting', is: ['motor carts'] }, { yes: least('75 psf', '125 psf'), no: least('50 psf', '100 psf') }),
  load('w_f', 'max(w_D + w_L, w_least)', 'load on the forms', aci('4.2.1')),
]

const bent = (formula: string): Step =>
  step('M_b', formula, { says: 'greatest moment', symbol: 'M_beam', unit: moment, source: statics })
const sunk = (formula: string): Step =>
  step('y_b', formula, { says: 'deflection', symbol: 'y', unit: { SI: 'mm', US: 'in' }, source: statics })

const eachBeam: readonly Step[] = [
  step('q', 'w_f * spacing', { says: 'load on the beam', symbol: 'w_l', unit: { SI: 'kN/m', US: 'plf' } }),
  when({ choice: 'spans', is: ['three or more'] }, { yes: [bent('q * span^2 / 10')], no: [bent('q * span^2 / 8')] }),
  step('V_b', '0.625 * q * span', { says: 'greatest shear', symbol: 'V_beam', unit: force, source: statics }),
  when(
    { choice: 'spans', is: ['three or more'] },
    {
      yes: [sunk('q * span^4 / (145 * stiffness)')],
      no: [sunk('5 * q * span^4 / (384 * stiffness)')],
    },
  ),
  check('bending', 'M_b <= moment_capacity', { says: 'moment', source: statics }),
  check('shear', 'V_b <= shear_capacity', { says: 'shear', source: statics }),
  check('deflection', 'y_b <= span / 360', { says: 'deflection', source: aci('common limit of formwork') }),
]

const last = (name: string, of: string, says: string): Step =>
  take(name, { list: 'beams', of, from: 'last', says, unit: { SI: 'm', US: 'ft' } })

/** Load, beams, props and bracing. */
export const slabFormworkSteps: readonly Step[] = [
  ...loads,
  each('beams', eachBeam),
  pairs('beams', [
    check('carried', 'spacing <= prev_span', {
      says: 'spacing against the span of what lies on them',
      aspect: 'geometry',
      source: statics,
    }),
  ]),
  last('s_p', 'span', 'spacing of the props: the span of the last beams'),
  last('s_b', 'spacing', 'spacing of these beams, the bearers'),
  step('P', '1.25 * w_f * s_p * s_b', {
    says: 'load of an inner prop, under a bearer of two spans',
    unit: force,
    source: statics,
  }),
  check('props', 'P <= prop_capacity', { says: 'load of a prop' }),
  step('h_b', 'max(100 plf, 0.02 * w_D * panel_width)', {
    says: 'level force to brace, per length of edge',
    unit: { SI: 'kN/m', US: 'plf' },
    source: aci('4.2.3'),
  }),
]
