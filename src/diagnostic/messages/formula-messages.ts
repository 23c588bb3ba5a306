import type { Rule } from '../rules.ts'
import { fence, type Message, notebook } from './message.ts'

const work = (...lines: readonly string[]): string => notebook(fence('work thrust', ...lines))

export const formulaMessages = {
  'formula-syntax': {
    means:
      'The formula cannot be read at the place shown: a bracket that is not closed, an operator without a number beside it, two values side by side.',
    example: work('e = (120 mm + 3 mm'),
    instead: 'Complete the formula. Multiplication is written, `2 * a`, except between a number and its unit.',
    stage: 'evaluation',
  },
  'formula-refused': {
    means:
      'The formula has something that could be read in two ways or that formulas do not have: `5 ft 6 in`, `M / 2 kN/m`, `a (3)`, `%`, primes, factorials, lists.',
    example: work('e = 5 ft 6 in'),
    instead: 'Write what is meant in full: `5 ft + 6 in`, `M / (2 kN/m)`, `a * 3`, `5 percent`.',
    stage: 'evaluation',
  },
  'formula-limit': {
    means: 'The formula is longer, or nests deeper, than formulas may.',
    example: work(`e = ${'('.repeat(60)}120 mm${')'.repeat(60)}`),
    instead: 'Divide it into several steps; a reviewer will thank you.',
    stage: 'evaluation',
  },
  'name-unknown': {
    means: 'The formula uses a name that nothing has: no line of this block, no `block.value` of another.',
    example: work('e = roof.M_s / 2'),
    instead: 'Write the name as it is given, with its block where it is another’s.',
    stage: 'evaluation',
  },
  'name-is-unit': {
    means:
      'Unit names are a closed list, and nothing else may have one of them: `N` would always be the newton. One-letter units are only m, s, g, N, W, J, V, A, K and L.',
    example: work('N = 120 kN'),
    instead: 'Add an index: `N_u`, `V_u`, `A_s`.',
    stage: 'reader',
  },
  'name-form': {
    means:
      'A name that is given to a value could not be used in formulas. A name is a letter, Latin or Greek, then letters, digits and `_`; words such as `and`, `to` and `pi` and the names of functions have a meaning of their own.',
    example: work("f'_c = 30 MPa"),
    instead: 'Write for instance `f_c`, `water_depth` or `γ_w`.',
    stage: 'reader',
  },
  'name-duplicate': {
    means:
      'A name is given twice in one `work` block. Nothing is ever given a new value: a reviewer who reads a name must find one line that gives it.',
    example: work('e = 120 mm', 'e = 90 mm'),
    instead: 'Give the second line a name of its own.',
    stage: 'reader',
  },
  'unit-unknown': {
    means: 'What stands as a unit is none that notebooks know.',
    example: work('e = 120 mm to furlong'),
    instead: 'Write a unit of the list in `docs`; the message names what was probably meant.',
    stage: 'evaluation',
  },
  'dimension-mismatch': {
    means:
      'Two dimensions do not fit: a length added to a pressure, a force where a moment belongs, an exponent with a unit. Every formula is proved before any number is known, so this stands even where a value is missing.',
    example: work('e = 3 m + 2 kPa'),
    instead:
      'Correct the formula. Zero has a unit too (`0 m`), and an empirical formula divides by the unit it was made for: `0.17 * sqrt(f_c / MPa) * MPa`.',
    stage: 'evaluation',
  },
  'reference-cycle': {
    means:
      'Values refer to each other in a ring, so none can come first. The message prints the ring, each link with its line.',
    example: work('a = 2 * b', 'b = a + 1'),
    instead: 'Break the ring: assume one of the values and check it against the result.',
    stage: 'evaluation',
  },
  'statement-unread': {
    means:
      'A line of a `work` block is neither a step (`name = formula`), nor a check (a comparison), nor a table (`table name = x1, y1; x2, y2`).',
    example: work('120 mm / 6'),
    instead: 'Give the value a name, compare it, or put a `#` before a line that is only a remark.',
    stage: 'reader',
  },
} as const satisfies Partial<Record<Rule, Message>>
