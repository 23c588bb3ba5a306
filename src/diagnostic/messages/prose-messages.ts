import type { Rule } from '../rules.ts'
import { fence, type Message, notebook } from './message.ts'

const block = fence('work thrust', 'e = 120 mm')

export const proseMessages = {
  'mention-unknown': {
    means: 'A `:value[…]`, `:see[…]` or `:cite[…]` in the text names something that the notebook does not have.',
    example: notebook(block, '', 'The thrust stands off by :value[thrust.f].'),
    instead:
      'Write the name as it is given. `:cite` names a key of `references` in the title block or a source of a module.',
    stage: 'evaluation',
  },
  'mention-form': {
    means:
      'A reference in the text is not written as it must be: `:value[block.name]`, with `{unit="kN" figures=3}` after it where wanted, `:see[block]`, `:cite[key]`. Text that only looks similar, such as `1:1.5` or `IS 456:2000`, is left alone; a slip such as `:vlaue[thrust.e]` is reported where the bracket holds a name of this notebook.',
    example: notebook(block, '', 'The thrust stands off by :value[thrust].'),
    instead: 'Write the form that the message gives. To show such text as it is, put it in backticks.',
    stage: 'reader',
  },
  'notice-form': {
    means:
      'A box is `:::caution` or `:::hold` alone on its line, then its text, then `:::` alone. Here a box is empty, or a line is nearly the head of a box and would be printed as plain text.',
    example: notebook('::: caution', 'The pit fills within a day when the pump stops.', ':::'),
    instead: 'Write `:::caution` without a blank, and the text on the next line.',
    stage: 'reader',
  },
} as const satisfies Partial<Record<Rule, Message>>
