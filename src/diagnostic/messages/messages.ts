import type { Rule } from '../rules.ts'
import { blockMessages } from './block-messages.ts'
import { fileMessages } from './file-messages.ts'
import { formulaMessages } from './formula-messages.ts'
import type { Message } from './message.ts'
import { proseMessages } from './prose-messages.ts'
import { titleMessages } from './title-messages.ts'
import { valueMessages } from './value-messages.ts'

/** The page of every rule. Each example is run by a test, so that the pages cannot part from what is said. */
export const messages: Readonly<Record<Rule, Message>> = {
  ...fileMessages,
  ...titleMessages,
  ...blockMessages,
  ...formulaMessages,
  ...valueMessages,
  ...proseMessages,
}
