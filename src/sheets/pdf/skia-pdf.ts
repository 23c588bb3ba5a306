import { inflateSync } from 'node:zlib'
import { parsePdfValue } from './parse-pdf-object.ts'
import { isDictionary, isReference, type PdfDictionary, type PdfValue } from './pdf-object.ts'
import { messageOf, UnreadablePdf } from './print-failure.ts'

/** A PDF as Chromium's writer (Skia) leaves it: plain objects, one plain cross-reference table, no object streams. */
export interface SkiaPdf {
  /** The file, one character a byte. */
  readonly text: string
  /** One more than the highest object number. */
  readonly size: number
  readonly root: number
  readonly info: number
  /** Byte where the cross-reference table starts. */
  readonly crossReference: number
  /** Byte where each object starts, by its number; 0 where the number is free. */
  readonly offsets: readonly number[]
}

const TAIL = /trailer\n<<\/Size (\d+)\n\/Root (\d+) 0 R\n\/Info (\d+) 0 R>>\nstartxref\n(\d+)\n%%EOF\n?$/

/**
 * Returns where the objects of a freshly printed PDF are. Throws `UnreadablePdf` where the file has another form than Skia's own,
 * so that a change of writer is seen and never guessed at.
 */
export function readSkiaPdf(bytes: Uint8Array): SkiaPdf {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1')
  if (!text.startsWith('%PDF-')) throw new UnreadablePdf('the browser gave no PDF')
  const tail = TAIL.exec(text.slice(-200))
  if (!tail) throw new UnreadablePdf('the tail of the PDF is not in the plain form')
  const [size = 0, root = 0, info = 0, crossReference = 0] = tail.slice(1).map(Number)
  return { text, size, root, info, crossReference, offsets: readOffsets(text, size, crossReference) }
}

function readOffsets(text: string, size: number, start: number): number[] {
  const head = `xref\n0 ${size}\n`
  if (!text.startsWith(head, start)) throw new UnreadablePdf('the cross-reference table is not in the plain form')
  return Array.from({ length: size }, (_, number) => {
    const at = start + head.length + 20 * number
    return text[at + 17] === 'n' ? Number(text.slice(at, at + 10)) : 0
  })
}

/** Returns the byte at which the value of an object starts, after its `12 0 obj`. */
export function valueStart(pdf: SkiaPdf, number: number): number {
  const offset = pdf.offsets[number] ?? 0
  const head = `${number} 0 obj\n`
  if (offset === 0 || !pdf.text.startsWith(head, offset))
    throw new UnreadablePdf(`object ${number} is not in its place`)
  return offset + head.length
}

/** Returns every object of the file with the bytes from its number to the end of its last line, in the order of the file. */
export function objectsOf({ offsets, crossReference: end }: SkiaPdf): { number: number; from: number; to: number }[] {
  const starts = [...offsets.entries()].filter(([, from]) => from > 0).sort((a, b) => a[1] - b[1])
  return starts.map(([number, from], index) => ({ number, from, to: starts[index + 1]?.[1] ?? end }))
}

/** Returns an object's value; of a stream, its dictionary. */
export function objectOf(pdf: SkiaPdf, number: number): PdfValue {
  return parsePdfValue(pdf.text, valueStart(pdf, number))
}

/** Returns the text of an object as it stands in the file, without the bytes of its stream. */
export function rawObject(pdf: SkiaPdf, number: number): string {
  const start = valueStart(pdf, number)
  const object = pdf.text.slice(start, pdf.text.indexOf('\nendobj', start))
  const stream = object.indexOf('>> stream\n')
  return stream < 0 ? object : object.slice(0, stream + 2)
}

/** Returns a value with a reference followed to its object. */
export function resolve(pdf: SkiaPdf, value: PdfValue | undefined): PdfValue | undefined {
  return isReference(value) ? objectOf(pdf, value.object) : value
}

/** Returns what a dictionary holds under a key, references followed; undefined where the value is no dictionary. */
export function entryOf(pdf: SkiaPdf, value: PdfValue | undefined, key: string): PdfValue | undefined {
  const dictionary = resolve(pdf, value)
  return isDictionary(dictionary) ? resolve(pdf, dictionary.entries.get(key)) : undefined
}

/** Returns the dictionary of an object. Throws `UnreadablePdf` where it is none. */
export function dictionaryOf(pdf: SkiaPdf, number: number): PdfDictionary {
  const value = objectOf(pdf, number)
  if (!isDictionary(value)) throw new UnreadablePdf(`object ${number} is not a dictionary`)
  return value
}

/** Returns the bytes of an object's stream, inflated, one character a byte. */
export function streamOf(pdf: SkiaPdf, number: number): string {
  const start = valueStart(pdf, number)
  const length = entryOf(pdf, dictionaryOf(pdf, number), 'Length')
  const data = pdf.text.indexOf('>> stream\n', start) + '>> stream\n'.length
  if (typeof length !== 'number' || data < start) throw new UnreadablePdf(`object ${number} has no stream`)
  const raw = Buffer.from(pdf.text.slice(data, data + length), 'latin1')
  const packed = entryOf(pdf, dictionaryOf(pdf, number), 'Filter') !== undefined
  return (packed ? inflate(raw, number) : raw).toString('latin1')
}

function inflate(raw: Buffer, number: number): Buffer {
  try {
    return inflateSync(raw)
  } catch (thrown) {
    throw new UnreadablePdf(`the stream of object ${number} cannot be inflated: ${messageOf(thrown)}`)
  }
}
