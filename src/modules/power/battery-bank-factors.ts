import type { Input } from '../module.ts'
import { cite } from '../sources.ts'
import { ratio } from '../words.ts'

const ownDepth = { choice: 'method', is: ['worksheet', 'IEEE 1013'] }

/** Depths, factors and margin by which a bank is made larger than its load. */
export const batteryBankFactors = {
  discharge_most: ratio({
    says: 'greatest depth of discharge',
    note: '0.5 for deep-cycle lead-acid, 0.8 at most; 0.8 to 0.9 for lithium iron phosphate',
    symbol: 'D_m',
    above: '0',
    most: '0.9',
    usual: ['0.3', '0.8'],
    default: '0.5',
    when: ownDepth,
    source: cite('pv-worksheet', 'lead-acid, deep cycle'),
  }),
  daily_most: ratio({
    says: 'greatest depth of discharge in one day',
    symbol: 'D_1',
    above: '0',
    most: '0.8',
    usual: ['0.1', '0.5'],
    default: '0.2',
    when: { choice: 'method', is: ['IEEE 1013'] },
    source: cite('practice'),
  }),
  end_of_life: ratio({
    says: 'share of the rated capacity at the end of its life',
    symbol: 'e',
    least: '0.5',
    most: '1',
    default: '0.8',
    when: { choice: 'method', is: ['IEEE 1013'] },
    source: cite('ieee-1013', 'memory'),
  }),
  ageing: ratio({
    says: 'factor for ageing',
    symbol: 'k_l',
    least: '1',
    most: '2',
    usual: ['1.2', '1.3'],
    default: '1.25',
    when: { choice: 'method', is: ['IEEE 485'] },
    source: cite('ieee-485', '1/0.80'),
  }),
  margin: ratio({
    says: 'design margin',
    note: '1.10 to 1.15 is usual; 1 where the rule has none',
    symbol: 'k_m',
    least: '1',
    most: '2',
    usual: ['1', '1.25'],
  }),
} as const satisfies Readonly<Record<string, Input>>
