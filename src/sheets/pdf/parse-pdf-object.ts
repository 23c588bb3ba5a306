import { isName, type PdfValue, pdfName, pdfReference } from './pdf-object.ts'
import { UnreadablePdf } from './print-failure.ts'

interface Parsed {
  readonly value: PdfValue
  readonly end: number
}

const ESCAPES: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' }

/** Returns the value that starts at `start` of a PDF's text (Latin-1). Throws `UnreadablePdf`. Source: ISO 32000-1, 7.3. */
export function parsePdfValue(text: string, start: number): PdfValue {
  return parseAt(text, start).value
}

function parseAt(text: string, start: number): Parsed {
  const at = skipSpace(text, start)
  if (text.startsWith('<<', at)) return parseDictionary(text, at + 2)
  if (text[at] === '[') return parseArray(text, at + 1)
  if (text[at] === '(') return parseLiteral(text, at + 1)
  if (text[at] === '<') return parseHex(text, at)
  return parseWord(text, at)
}

function skipSpace(text: string, start: number): number {
  let at = start
  while (' \n\r\t\f\0'.includes(text[at] ?? 'x')) at += 1
  return at
}

function parseDictionary(text: string, start: number): Parsed {
  const entries = new Map<string, PdfValue>()
  let at = skipSpace(text, start)
  while (!text.startsWith('>>', at)) {
    const key = parseAt(text, at)
    const name = key.value
    if (!isName(name)) throw new UnreadablePdf(`expected a name in a dictionary at byte ${at}`)
    const value = parseAt(text, key.end)
    entries.set(name.name, value.value)
    at = skipSpace(text, value.end)
  }
  return { value: { kind: 'dictionary', entries }, end: at + 2 }
}

function parseArray(text: string, start: number): Parsed {
  const values: PdfValue[] = []
  let at = skipSpace(text, start)
  while (text[at] !== ']') {
    const item = parseAt(text, at)
    values.push(item.value)
    at = skipSpace(text, item.end)
  }
  return { value: values, end: at + 1 }
}

function parseLiteral(text: string, start: number): Parsed {
  let bytes = ''
  let depth = 1
  for (let at = start; at < text.length; at += 1) {
    const character = text[at] ?? ''
    if (character === '\\') {
      const octal = /^[0-7]{1,3}/.exec(text.slice(at + 1, at + 4))?.[0]
      const next = text[at + 1] ?? ''
      if (octal !== undefined) bytes += String.fromCharCode(Number.parseInt(octal, 8) & 255)
      else if (next !== '\n') bytes += ESCAPES[next] ?? next
      at += octal?.length ?? 1
      continue
    }
    if (character === '(') depth += 1
    if (character === ')') depth -= 1
    if (depth === 0) return { value: { kind: 'string', bytes }, end: at + 1 }
    bytes += character
  }
  throw new UnreadablePdf(`a string that starts at byte ${start} has no end`)
}

function parseHex(text: string, at: number): Parsed {
  const close = text.indexOf('>', at)
  const digits = text.slice(at + 1, close).replace(/\s/g, '')
  if (close < 0 || !/^[\dA-Fa-f]*$/.test(digits))
    throw new UnreadablePdf(`a hexadecimal string at byte ${at} is broken`)
  return {
    value: {
      kind: 'string',
      bytes: Buffer.from(digits.length % 2 === 0 ? digits : `${digits}0`, 'hex').toString('latin1'),
    },
    end: close + 1,
  }
}

const WORD = /\/?[^\s/<>[\](){}%]+/y
const REFERENCE = /(\d+) \d+ R\b/y

function parseWord(text: string, at: number): Parsed {
  REFERENCE.lastIndex = at
  const reference = REFERENCE.exec(text)
  if (reference) return { value: pdfReference(Number(reference[1])), end: REFERENCE.lastIndex }
  WORD.lastIndex = at
  const word = WORD.exec(text)?.[0]
  if (word === undefined) throw new UnreadablePdf(`expected a value at byte ${at}`)
  return { value: wordValue(word, at), end: at + word.length }
}

function wordValue(word: string, at: number): PdfValue {
  if (word.startsWith('/')) return pdfName(unescapeName(word.slice(1)))
  if (word === 'true' || word === 'false') return word === 'true'
  if (word === 'null') return null
  const number = Number(word)
  if (Number.isNaN(number)) throw new UnreadablePdf(`expected a value at byte ${at}, got \`${word.slice(0, 20)}\``)
  return number
}

function unescapeName(name: string): string {
  return name.replace(/#([\dA-Fa-f]{2})/g, (_, digits: string) => String.fromCharCode(Number.parseInt(digits, 16)))
}
