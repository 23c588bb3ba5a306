import { cite } from '../sources.ts'
import { quantity, ratio } from '../words.ts'
import { ampereHours, volts } from './power-units.ts'

/** Charge drawn from the bank in a day: what the modules of this wing hand to each other. */
export const dailyCharge = quantity('charge', {
  says: 'charge drawn from the bank in a day',
  symbol: 'Q_d',
  unit: ampereHours,
  above: '0 Ah',
})

export const chargeEfficiency = ratio({
  says: 'charge given back over charge put in',
  note: '0.85 to 0.95 for lead-acid, 0.98 to 0.99 for lithium',
  symbol: 'eta_q',
  least: '0.5',
  most: '1',
  usual: ['0.85', '0.99'],
})

export const chargeVoltage = quantity('voltage', {
  says: 'mean voltage at the bank while it charges',
  note: '1.1 to 1.2 times the nominal voltage for lead-acid: a charge costs more energy than the nominal voltage says',
  symbol: 'V_c',
  unit: volts,
  least: '2 V',
  most: '150 V',
})

/** Charge to put back for each day. */
export const chargeBack = {
  says: 'charge to put back for each day',
  symbol: 'Q_c',
  unit: ampereHours,
  source: cite('power-balance'),
} as const
