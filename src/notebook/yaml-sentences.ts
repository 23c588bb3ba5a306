import type { YAMLError } from 'yaml'
import type { Rule } from '../diagnostic/rules.ts'

export interface YamlSentence {
  readonly rule: Extract<Rule, 'yaml-syntax' | 'yaml-feature'>
  readonly says: string
  readonly help?: string
}

const quote = 'Put the value in single quotes'

/**
 * Returns what to tell the author about an error of the YAML reader. `rest` is the block's text from the error to the end
 * of its line.
 */
export function yamlSentence(error: YAMLError, rest: string): YamlSentence {
  switch (error.code) {
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'MULTILINE_IMPLICIT_KEY':
      return syntax(
        'A value holds `: `, or the line is indented under a key that already has a value',
        `${quote}, or align the keys`,
      )
    case 'BAD_SCALAR_START':
      return syntax(`A value cannot begin with \`${rest.slice(0, 1)}\``, quote)
    case 'TAB_AS_INDENT':
      return syntax('The line is indented with a tab', 'Indent with blanks')
    case 'BAD_INDENT':
      return badIndent(error.message)
    case 'BAD_DQ_ESCAPE':
      return syntax(
        'The text in double quotes holds a `\\` that means nothing',
        'Use single quotes, in which `\\` stands for itself',
      )
    case 'MISSING_CHAR':
      return missing(error.message)
    case 'UNEXPECTED_TOKEN':
      return unexpected(error.message, rest)
    case 'BAD_ALIAS':
    case 'ALIAS_PROPS':
    case 'MULTIPLE_ANCHORS':
      return feature('`&` and `*` at the head of a value are anchors and aliases, which notebooks do not use', quote)
    case 'MULTIPLE_TAGS':
    case 'TAG_RESOLVE_FAILED':
    case 'BAD_PROP_ORDER':
      return feature('`!` at the head of a value is a tag, which notebooks do not use', quote)
    case 'MULTIPLE_DOCS':
      return feature('`---` begins a second document; a block is one', 'Leave the line out')
    case 'BAD_DIRECTIVE':
      return feature(
        'A line that begins with `%` is a directive of YAML, which notebooks do not use',
        'Leave the line out',
      )
    case 'KEY_OVER_1024_CHARS':
      return syntax('A key is longer than 1024 characters', 'Write a short key, and `: ` after it')
    case 'BLOCK_IN_FLOW':
      return syntax(
        'A value inside brackets holds `: `, or a list or map of several lines stands there',
        `${quote}, or write \`[a, b]\` or \`{ key: value }\` in full`,
      )
    default:
      return syntax(`The block cannot be read here: ${sentence(error.message)}`)
  }
}

const syntax = (says: string, help?: string): YamlSentence => ({ rule: 'yaml-syntax', says, ...(help && { help }) })
const feature = (says: string, help: string): YamlSentence => ({ rule: 'yaml-feature', says, help })
const sentence = (message: string): string => message.replace(/^./, first => first.toLowerCase())

function badIndent(message: string): YamlSentence {
  if (/\]$/.test(message)) return syntax('A list is opened with `[` and not closed', 'Close it with `]`')
  if (/\}$/.test(message)) return syntax('A map is opened with `{` and not closed', 'Close it with `}`')
  return syntax('The line is not indented like the lines beside it', 'Indent the keys of one map alike')
}

function missing(message: string): YamlSentence {
  if (message.includes('quote'))
    return syntax('A quote is opened and not closed', 'Close it with a quote of the same kind')
  if (/key/i.test(message))
    return syntax('The line has no `: ` between key and value', 'Write `key: value`, with a blank after the colon')
  if (message.includes('Missing ,'))
    return syntax('Inside brackets, what stands here is neither a value of its own nor part of the one before', quote)
  return syntax(`The block cannot be read here: ${sentence(message)}`)
}

function unexpected(message: string, rest: string): YamlSentence {
  if (message.includes('block-seq-ind')) {
    return syntax(
      'A `- ` begins a list, which cannot stand on the line of its key',
      'Write a negative number without the blank, `-5`, or put the list on lines of its own',
    )
  }
  if (message.includes('in flow'))
    return syntax('A comma has nothing before it', 'Leave the comma out, or write what is missing before it')
  if (/block scalar|Not a YAML token/i.test(message))
    return syntax('A value that begins with `>` or `|` opens a text of several lines', quote)
  const seen = rest.trim() === '' ? '' : `: \`${rest.trim().slice(0, 40)}\``
  return syntax(`Something stands where the value has ended${seen}`, 'Put the whole value in single quotes')
}
