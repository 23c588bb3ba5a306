import type { YAMLParseError } from 'yaml'

/** What is wrong with a record, and the line it stands on. */
export interface RecordFault {
  readonly line: number
  readonly says: string
}

/** The marks that version control leaves where two versions of a file did not go together. */
export function mergeFault(text: string): RecordFault | undefined {
  const line = text.split('\n').findIndex(each => /^(?:<{7}|>{7})(?: |\r?$)/.test(each))
  return line < 0
    ? undefined
    : {
        line: line + 1,
        says: 'A merge left two versions here: keep the entries that are meant, of both sides, and take out the lines with `<<<<<<<`, `=======` and `>>>>>>>`',
      }
}

/** The first thing for which the text is no YAML; what follows is mostly its consequence. */
export function yamlFault(
  text: string,
  errors: readonly YAMLParseError[],
  lineAt: (offset: number) => number,
): RecordFault | undefined {
  const [first] = errors
  return first && { line: lineAt(first.pos[0]), says: sentence(text, first) }
}

function sentence(text: string, { code, message, pos }: YAMLParseError): string {
  if (code === 'MULTIPLE_DOCS') return 'A second document begins here, and a record is one'
  if (code === 'DUPLICATE_KEY') return `\`${/^[^:,{}]*/.exec(text.slice(pos[0]))?.[0].trim()}\` stands here twice`
  if (/call stack/.test(message)) return 'Lists stand too deep inside each other here'
  const close = code === 'BAD_INDENT' ? /[\]}]$/.exec(message)?.[0] : undefined
  if (close) return `What is opened before this is not closed with \`${close}\`; perhaps the file is cut short`
  if (code === 'MISSING_CHAR' && message.includes('quote')) return 'A quote is opened here and not closed'
  if (code === 'MISSING_CHAR' && /key/i.test(message)) return 'This line is no entry of a record: take it out'
  return `The record cannot be read here: ${message
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^./, first => first.toLowerCase())}`
}
