import type { Second } from '../module.ts'
import { cite } from '../sources.ts'
import { each, step } from '../words.ts'
import { airPressure } from './living-units.ts'
import { explicitLoss } from './pipe-friction.ts'

const loss = { says: 'loss of the duct', symbol: 'Delta_p_h', unit: airPressure } as const

/** The ducts by an explicit friction formula. */
export const ductLossSecond: Second = {
  title: 'An explicit friction formula',
  says: 'The friction factor of Haaland, which needs no root; in laminar flow the law of Hagen and Poiseuille. Fittings are the same in both, so it finds a slip in the friction, not in the list of fittings.',
  steps: [
    each('ducts', [
      explicitLoss(
        { Re: 'Re', roughness: 'roughness', bore: 'bore' },
        {
          laminar: step('dp_h', '32 * density * viscosity * v * run / bore^2 + zeta * p_v', {
            ...loss,
            source: cite('cengel-fluid', 'Hagen and Poiseuille'),
          }),
          turbulent: step('dp_h', '(f_h * run / bore + zeta) * p_v', loss),
        },
      ),
    ]),
    step('dp_second', 'sum(ducts.dp_h)', { says: 'loss of all ducts', symbol: 'Delta_p_t', unit: airPressure }),
  ],
  compare: [{ first: 'dp_ducts', second: 'dp_second', band: 0.02, says: 'Haaland stands within 2 % of Colebrook' }],
}
