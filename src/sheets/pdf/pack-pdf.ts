import { crossReference, type ObjectPlace } from './cross-reference.ts'
import { objectStreams, type PlainObject } from './object-streams.ts'
import { type PdfDictionary, type PdfValue, pdfReference } from './pdf-object.ts'
import { streamObject } from './pdf-streams.ts'
import { UnreadablePdf } from './print-failure.ts'
import { objectsOf, type SkiaPdf } from './skia-pdf.ts'
import { writePdfValue } from './write-pdf-object.ts'

/** One object to write: its number, its dictionary, and its stream's bytes where it is a stream. */
export interface NewObject {
  readonly number: number
  readonly value: PdfDictionary
  readonly stream?: Uint8Array
}

const head = Buffer.from('%PDF-1.7\n%\xD3\xEB\xE9\xE1\n', 'latin1')

/**
 * Returns a printed PDF written anew with objects added or replaced: streams as they stand, all else in object streams, which makes it some four times
 * smaller. The identifier is the first half of a SHA-256 in hexadecimal. Throws `UnreadablePdf` where an object is not in Skia's form.
 * Source: ISO 32000-1, 7.5.
 */
export function packPdf(
  pdf: Uint8Array,
  skia: SkiaPdf,
  { objects, sha256 }: { readonly objects: readonly NewObject[]; readonly sha256: string },
): Uint8Array {
  const added = new Map(objects.map(object => [object.number, object]))
  const plain: PlainObject[] = []
  const whole: (readonly [number, Buffer])[] = []
  for (const { number, from, to } of objectsOf(skia)) {
    if (added.has(number)) continue
    const text = skia.text.slice(from, to)
    if (text.includes('>> stream\n')) whole.push([number, Buffer.from(pdf.buffer, pdf.byteOffset + from, to - from)])
    else plain.push({ number, text: bodyOf(text, number) })
  }
  for (const { number, value, stream } of objects) {
    if (stream) whole.push([number, streamObject(number, value, stream)])
    else plain.push({ number, text: writePdfValue(value) })
  }
  const size = Math.max(skia.size, ...objects.map(({ number }) => number + 1))
  const packed = objectStreams(plain, size)
  whole.push(...packed.streams.map((bytes, index) => [size + index, bytes] as const))
  return written(whole, packed.places, { reference: size + packed.streams.length, skia, sha256 })
}

function bodyOf(text: string, number: number): string {
  const [start, end] = [`${number} 0 obj\n`, '\nendobj\n']
  if (!text.startsWith(start) || !text.endsWith(end)) throw new UnreadablePdf(`object ${number} is not in its place`)
  return text.slice(start.length, -end.length)
}

function written(
  whole: readonly (readonly [number, Buffer])[],
  packed: ReadonlyMap<number, ObjectPlace>,
  { reference, skia, sha256 }: { readonly reference: number; readonly skia: SkiaPdf; readonly sha256: string },
): Uint8Array {
  const places = new Map<number, ObjectPlace>(packed)
  let at = head.length
  for (const [number, bytes] of whole) {
    places.set(number, at)
    at += bytes.length
  }
  places.set(reference, at)
  const id: PdfValue = { kind: 'string', bytes: Buffer.from(sha256.slice(0, 32), 'hex').toString('latin1') }
  const trailer = { Root: pdfReference(skia.root), Info: pdfReference(skia.info), ID: [id, id] }
  const tail = Buffer.from(`startxref\n${at}\n%%EOF\n`)
  const bytes = whole.map(([, object]) => object)
  return new Uint8Array(Buffer.concat([head, ...bytes, crossReference(reference, places, trailer), tail]))
}
