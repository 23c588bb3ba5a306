import { quantity } from '../words.ts'
import { days, people } from './living-units.ts'

/** Who stays, and for how long: asked for by every store. */
export const stayInputs = {
  people: quantity('persons', {
    says: 'people who stay',
    symbol: 'N_p',
    unit: people,
    least: '1 person',
    most: '5000 person',
  }),
  days: quantity('time', {
    says: 'days of the stay',
    symbol: 't_s',
    unit: days,
    above: '0 day',
    most: '400 day',
    usual: ['3 day', '90 day'],
  }),
}
