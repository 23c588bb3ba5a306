import type { Rule } from '../rules.ts'
import { fence, type Message, notebook } from './message.ts'

const shield = (thickness: string, ...lines: readonly string[]): string =>
  notebook(
    fence(
      'calc halving-layers roof',
      `layers: [{ layer: cover, material: packed earth, thickness: ${thickness} }]`,
      ...lines,
    ),
  )

export const valueMessages = {
  'value-not-finite': {
    means:
      'For these numbers the formula has no finite value: a division by zero, the root of a negative number, a power past all bounds. What depends on it is not evaluated either, and is counted here instead of being reported again.',
    example: notebook(fence('work thrust', 'a = 3 m - 3000 mm', 'k = 1 m / a')),
    instead: 'Look at the values that go in; one of them is probably not what was meant.',
    stage: 'evaluation',
  },
  'value-outside-range': {
    means:
      'A value lies where the method has no meaning. The block is not evaluated: a number outside a method’s validity is worse than none.',
    example: shield('-450 mm', 'required_factor: 500'),
    instead: 'Correct the value, or choose a method that covers it.',
    stage: 'evaluation',
  },
  'value-unusual': {
    means:
      'A value lies where the method holds but practice seldom goes. It is a warning: the result stands, and the package lists it.',
    example: shield('450 mm', 'required_factor: 5'),
    instead: 'Check the value and its unit; where it is right, say in the text why.',
    stage: 'evaluation',
  },
  'limit-exceeded': {
    means:
      'A limit of validity of the method is not kept. Where the source gives no result beyond it the block is refused; otherwise it is a warning, and the package prints the limit as exceeded.',
    example: notebook(
      fence(
        'calc two-way-slab roof',
        'short_span: 4.6 m',
        'long_span: 3.4 m',
        'load: 57 kN/m^2',
        'edges: all continuous',
        'corners: held down',
      ),
    ),
    instead: 'Change the inputs so that the limit is kept, or choose another method.',
    stage: 'evaluation',
  },
  'lookup-outside-table': {
    means:
      'A table of the method, or of the notebook, does not reach the value it is asked for. Nothing is extrapolated.',
    noExample: 'The modules of the catalogue refuse such values by their ranges and limits before a table is asked.',
    instead: 'Keep to what the table covers, or choose another method.',
    stage: 'evaluation',
  },
  'solve-failed': {
    means: 'A numerical method did not come to an answer that meets its own tolerance.',
    noExample: 'The numerical methods of the catalogue come to an answer wherever their inputs are accepted.',
    instead:
      'Look at the inputs: such values are usually far from any real case. Where they are right, please report the notebook.',
    stage: 'evaluation',
  },
  'methods-disagree': {
    means:
      'The module’s second, independent method gives another answer than the first, by more than the band in which the two should agree. It is a warning that asks for thought, not proof that one is wrong: the package prints both with what they share.',
    example: notebook(
      fence(
        'calc halving-layers door',
        'layers: [{ layer: leaf, material: lead, thickness: 100 mm }]',
        'required_factor: 500',
        'energy: 2 MeV',
      ),
    ),
    instead:
      'Read what the module says of the band. Where the case lies outside what the methods share, take the safe one and say so.',
    stage: 'evaluation',
  },
  'check-not-satisfied': {
    means:
      'A check of a module or of the author’s own working is not satisfied. It is an answer, not a fault of the notebook: the package is written all the same and says so on its cover.',
    example: notebook(fence('work thrust', 'e = 120 mm', 'k = 50 mm', 'e <= k   # no tension at the face')),
    instead: 'Change the design.',
    stage: 'evaluation',
  },
} as const satisfies Partial<Record<Rule, Message>>
