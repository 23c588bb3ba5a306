import { type PdfDictionary, type PdfValue, pdfDictionary, pdfReference } from './pdf-object.ts'
import type { SkiaPdf } from './skia-pdf.ts'
import { writePdfValue } from './write-pdf-object.ts'

/** One object to write: its number, its dictionary, and its stream's bytes where it is a stream. */
export interface NewObject {
  readonly number: number
  readonly value: PdfDictionary
  readonly stream?: Uint8Array
}

/**
 * Returns a PDF with objects added or replaced at its end, the bytes before left as they are. The identifier is the first half of a SHA-256 in hexadecimal.
 * Source: ISO 32000-1, 7.5.6.
 */
export function appendUpdate(
  pdf: Buffer,
  skia: SkiaPdf,
  update: { objects: readonly NewObject[]; sha256: string },
): Uint8Array {
  const parts: Buffer[] = [pdf, Buffer.from(skia.text.endsWith('\n') ? '' : '\n')]
  const places: (readonly [number, number])[] = []
  let at = parts.reduce((sum, part) => sum + part.length, 0)
  for (const object of update.objects) {
    const bytes = objectBytes(object)
    places.push([object.number, at])
    parts.push(bytes)
    at += bytes.length
  }
  return new Uint8Array(
    Buffer.concat([...parts, Buffer.from(tailOf(skia, places, { start: at, sha256: update.sha256 }), 'latin1')]),
  )
}

function objectBytes(object: NewObject): Buffer {
  const length = object.stream?.length
  const value =
    length === undefined ? object.value : pdfDictionary({ ...Object.fromEntries(object.value.entries), Length: length })
  const head = `${object.number} 0 obj\n${writePdfValue(value)}`
  if (object.stream === undefined) return Buffer.from(`${head}\nendobj\n`, 'latin1')
  return Buffer.concat([Buffer.from(`${head} stream\n`, 'latin1'), object.stream, Buffer.from('\nendstream\nendobj\n')])
}

function tailOf(
  skia: SkiaPdf,
  places: readonly (readonly [number, number])[],
  update: { start: number; sha256: string },
): string {
  const entries = [...places]
    .sort((a, b) => a[0] - b[0])
    .map(([number, at]) => `${number} 1\n${String(at).padStart(10, '0')} 00000 n \n`)
  const size = Math.max(skia.size, ...places.map(([number]) => number + 1))
  const id: PdfValue = { kind: 'string', bytes: Buffer.from(update.sha256.slice(0, 32), 'hex').toString('latin1') }
  const trailer = pdfDictionary({
    Size: size,
    Root: pdfReference(skia.root),
    Info: pdfReference(skia.info),
    Prev: skia.crossReference,
    ID: [id, id],
  })
  return `xref\n${entries.join('')}trailer\n${writePdfValue(trailer)}\nstartxref\n${update.start}\n%%EOF\n`
}
