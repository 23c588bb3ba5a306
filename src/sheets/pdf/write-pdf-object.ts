import type { PdfValue } from './pdf-object.ts'

/** Returns a value as PDF text: plain strings as they read, others in hexadecimal. Source: ISO 32000-1, 7.3. */
export function writePdfValue(value: PdfValue): string {
  if (value === null || typeof value !== 'object') return String(value)
  if (!('kind' in value)) return `[${value.map(writePdfValue).join(' ')}]`
  if (value.kind === 'name') return writeName(value.name)
  if (value.kind === 'string') return writeString(value.bytes)
  if (value.kind === 'reference') return `${value.object} 0 R`
  return `<<${[...value.entries].map(([key, item]) => `${writeName(key)} ${writePdfValue(item)}`).join('\n')}>>`
}

function writeString(bytes: string): string {
  if (/^[\x20-\x7E]*$/.test(bytes)) return `(${bytes.replace(/[\\()]/g, '\\$&')})`
  return `<${Buffer.from(bytes, 'latin1').toString('hex').toUpperCase()}>`
}

function writeName(name: string): string {
  return `/${name.replace(/[^A-Za-z\d_.+*-]/g, character => `#${hexByte(character)}`)}`
}

function hexByte(character: string): string {
  return character.charCodeAt(0).toString(16).toUpperCase().padStart(2, '0')
}

/** Returns text as a PDF text string: plain where it is ASCII, else UTF-16 with its mark. Source: ISO 32000-1, 7.9.2.2. */
export function pdfText(text: string): PdfValue {
  const ascii = /^[\x20-\x7E]*$/.test(text)
  const bytes = ascii ? text : Buffer.from(`\uFEFF${text}`, 'utf16le').swap16().toString('latin1')
  return { kind: 'string', bytes }
}

/** Returns a date in PDF's form, universal time, to the second. Source: ISO 32000-1, 7.9.4. Throws `RangeError` where the date is none or its year has not four digits. */
export function pdfDate(date: Date): PdfValue {
  if (!/^\d{4}-/.test(date.toISOString())) throw new RangeError('expected a year of four digits')
  return { kind: 'string', bytes: `D:${date.toISOString().slice(0, 19).replace(/\D/g, '')}+00'00'` }
}
