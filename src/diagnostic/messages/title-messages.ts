import type { Rule } from '../rules.ts'
import type { Message } from './message.ts'

export const titleMessages = {
  'front-matter-missing': {
    means:
      'A notebook begins with its title block: a line `---` at the very head of the file, `key: value` lines and a line `---`. Only `title` is required.',
    example: '# Shelter roof\n\nThe roof carries 1.8 m of soil.\n',
    instead: 'Begin the file with\n\n```yaml\n---\ntitle: Shelter roof and walls\n---\n```',
    stage: 'reader',
  },
  'front-matter-key': {
    means:
      'The title block, or a row of its `revisions`, has a key that notebooks do not know. It is an error and not passed over, because a name that is misspelled would otherwise be missing from the cover.',
    example: '---\ntitle: Shelter roof\nprepred: I. Aldous\n---\n',
    instead:
      'Write the key as it is known: title, project, number, revision, purpose, prepared, checked, approved, check level, date, language, units, figures, paper, codes, revisions, references. Other facts belong in the text.',
    stage: 'reader',
  },
  'front-matter-value': {
    means:
      'A value of the title block is not what its key takes: a day that the calendar does not have, a word that is not one of the choices, a single value where a list stands. The current `revision` must be a row of `revisions` where that table is given, and every row has its mark, day and reason.',
    example: '---\ntitle: Shelter roof\ndate: 2026-02-30\n---\n',
    instead:
      '`date` and the days of revisions are written `2026-03-02`; `units` is `SI` or `US`; `paper` is `A4` or `letter`; `figures` is 3 to 6; `check level` is `self`, `other person` or `other organisation`; `codes` is a list, `[IS 456:2000]`.',
    stage: 'reader',
  },
  'checker-is-preparer': {
    means:
      'The name before the first comma of `checked` is the name before the first comma of `prepared`. A check is worth what the checker does not share with the preparer (EN 1990, Table B4 tells the levels apart), so a self check must say that it is one.',
    example: '---\ntitle: Shelter roof\nprepared: I. Aldous, Skerry Works\nchecked: I. Aldous, 2026-03-02\n---\n',
    instead:
      'Name another person, leave `checked` blank for a signature, or write `check level: self`, which the cover then prints.',
    stage: 'reader',
  },
} as const satisfies Partial<Record<Rule, Message>>
