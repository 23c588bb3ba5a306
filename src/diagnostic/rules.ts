/**
 * The closed list of rule names. A name, once released, is never reused for another meaning.
 * Each has a page in docs/messages.
 */
export const rules = {
  // the file
  'file-not-utf8': 'The file is not UTF-8 text',
  'file-too-large': 'The file passes a limit of the reader',
  'fence-unclosed': 'A block is opened and never closed',
  'container-stray': 'A `:::` line closes nothing',
  // front matter
  'front-matter-missing': 'The notebook has no title block',
  'front-matter-key': 'A key of the title block is unknown',
  'front-matter-value': 'A value of the title block is not of the kind it must be',
  // blocks
  'block-name': 'A block has no name, or one that cannot be used',
  'block-kind': 'A fence looks like a block but its first word is no kind of block',
  'block-duplicate': 'Two blocks have one name',
  'yaml-syntax': 'The block is not readable YAML',
  'yaml-feature': 'The block uses a part of YAML that notebooks do not',
  'key-duplicate': 'A key is given twice',
  'key-unknown': 'A key is unknown here',
  'key-missing': 'A key that is required is missing',
  'value-kind': 'A value is not of the kind that stands here',
  'module-unknown': 'No module has this name',
  'module-other-code': 'A module belongs to a code that the title block does not list',
  'choice-unknown': 'The word is not one of the choices',
  'assumption-basis': 'An assumption has no basis',
  'assumption-range': 'An assumption lies outside its own plausible range',
  'checker-is-preparer': 'The checker is the preparer',
  // formulas
  'formula-syntax': 'The formula cannot be read',
  'formula-refused': 'The formula uses something that formulas do not have',
  'formula-limit': 'The formula passes a limit',
  'name-unknown': 'Nothing has this name',
  'name-is-unit': 'The name is the name of a unit',
  'name-form': 'The name cannot be used in formulas',
  'name-duplicate': 'A name is given twice',
  'unit-unknown': 'No unit has this name',
  'dimension-mismatch': 'Two dimensions do not fit',
  'reference-cycle': 'Values refer to each other in a ring',
  'statement-unread': 'A line of working is neither a step nor a check',
  // values
  'value-not-finite': 'A value has no finite number',
  'value-outside-range': 'A value lies outside what the method allows',
  'value-unusual': 'A value lies outside its usual range',
  'limit-exceeded': 'A limit of validity is exceeded',
  'lookup-outside-table': 'A table does not reach this value',
  'solve-failed': 'A numerical method did not come to an answer',
  'methods-disagree': 'The second method differs by more than its band',
  'check-not-satisfied': 'A check is not satisfied',
  // prose
  'mention-unknown': 'The text mentions something that does not exist',
  'mention-form': 'A reference in the text is not written as it must be',
  'notice-form': 'A box in the text is not written as it must be',
} as const

export type Rule = keyof typeof rules
