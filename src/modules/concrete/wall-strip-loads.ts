import type { Step } from '../module.ts'
import { each, pairs, step, take, when } from '../words.ts'
import { depth, force, moment, statics, topFixed } from './wall-strip-words.ts'

const pressure = { SI: 'kPa', US: 'psf' }
const second = { SI: 'kN*m^2/m', US: 'lbf*ft^2/ft' }
const third = { SI: 'kN*m^3/m', US: 'lbf*ft^3/ft' }

/** Steps that only a strip with a fixed top needs: the second moment of the load. */
const forFixedTop = (steps: readonly Step[]): readonly Step[] => [when(topFixed, { yes: steps })]

/** The load between neighbouring points of the diagram, and its moments about the top of the strip. */
export const loadSteps: readonly Step[] = [
  each('diagram', [
    step('q', 'load_factor * p', { says: 'factored pressure at this point', symbol: 'q', unit: pressure }),
  ]),
  pairs('diagram', [
    step('h_s', 'abs(z - prev_z)', { says: 'height from the point above to this one', unit: depth }),
    step('F_s', 'h_s * (prev_q + q) / 2', { says: 'load on that height (trapezium)', unit: force, source: statics }),
    step('s_first', 'prev_z * F_s + h_s^2 * (prev_q + 2 * q) / 6', {
      says: 'its first moment about the top: load times depth',
      symbol: 's_1',
      unit: moment,
      source: statics,
    }),
    ...forFixedTop([
      step(
        's_second',
        'h_s / 12 * (prev_q * (3 * prev_z^2 + 2 * prev_z * z + z^2) + q * (prev_z^2 + 2 * prev_z * z + 3 * z^2))',
        {
          says: 'its second moment: load times depth squared',
          symbol: 's_2',
          unit: second,
          source: statics,
        },
      ),
    ]),
    step(
      's_third',
      'h_s / 20 * (prev_q * (4 * prev_z^3 + 3 * prev_z^2 * z + 2 * prev_z * z^2 + z^3) + q * (prev_z^3 + 2 * prev_z^2 * z + 3 * prev_z * z^2 + 4 * z^3))',
      { says: 'its third moment: load times depth cubed', symbol: 's_3', unit: third, source: statics },
    ),
  ]),
  take('z_first', { list: 'diagram', of: 'z', from: 'first', says: 'first depth of the diagram', unit: depth }),
  take('z_last', { list: 'diagram', of: 'z', from: 'last', says: 'last depth of the diagram', unit: depth }),
  step('P_q', 'sum(diagram.F_s)', { says: 'load on the strip', unit: force, source: statics }),
  step('S_first', 'sum(diagram.s_first)', { says: 'first moment about the top', symbol: 'S_1', unit: moment }),
  ...forFixedTop([
    step('S_second', 'sum(diagram.s_second)', { says: 'second moment about the top', symbol: 'S_2', unit: second }),
  ]),
  step('S_third', 'sum(diagram.s_third)', { says: 'third moment about the top', symbol: 'S_3', unit: third }),
]
