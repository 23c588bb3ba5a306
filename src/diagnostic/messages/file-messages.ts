import type { Rule } from '../rules.ts'
import { fence, type Message, notebook } from './message.ts'

const deepList = `${'['.repeat(21)}1 m${']'.repeat(21)}`

export const fileMessages = {
  'file-not-utf8': {
    means:
      'A notebook is plain text in UTF-8, with or without a byte order mark. A byte that is no part of a UTF-8 character stands at the place shown; every such byte is shown as `\ufffd`. A file that holds a NUL is no text either. Nothing of the file is read.',
    example: '---\ntitle: Höhe der Decke\n---\n',
    saved: 'Latin-1',
    instead:
      'Save the file as UTF-8. Most editors offer it under the name of the encoding; on the command line, `iconv -f LATIN1 -t UTF-8` converts a file.',
    stage: 'reader',
  },
  'file-too-large': {
    means:
      'Something passes a limit of the reader; the message says what and which limit. The limits are far above what a notebook needs: 2 MB for the file, 20,000 characters without a blank line (200,000 in a fence), quotes and lists 50 deep, brackets 50 deep in one paragraph, 1,000 blocks, 50,000 characters in a block and lists 20 deep in it, 500 lines of working in a block. They keep a slip, such as a fence that was never closed, from taking minutes.',
    example: notebook(fence('calc halving-layers roof', `layers: ${deepList}`)),
    instead: 'Divide the notebook, the paragraph or the block.',
    stage: 'reader',
  },
  'fence-unclosed': {
    means:
      'A block, a box or the title block is opened and the file, or the list, quote or box that holds it, ends before it is closed. What it swallowed is not read.',
    example: notebook('```work thrust', 'e = 120 mm', '', 'The text goes on here.'),
    instead:
      'Close a block with a line of the same marks it was opened with (`` ``` ``), a box with `:::`, the title block with `---`. A box that holds another needs more colons than the inner one: `::::caution` … `::::`.',
    stage: 'reader',
  },
  'container-stray': {
    means:
      'A line of colons alone closes nothing. Often a box stands in another with as many colons: the first `:::` closes the outer one, and the last is left over.',
    example: notebook('The pump is tested weekly.', '', ':::'),
    instead: 'Leave the line out, or write the opening line that belongs to it.',
    stage: 'reader',
  },
} as const satisfies Partial<Record<Rule, Message>>
