import type { Attachment } from '../attachment.ts'
import type { NewObject } from './pack-pdf.ts'
import { type PdfValue, pdfDictionary, pdfName, pdfReference } from './pdf-object.ts'
import { pdfDate, pdfText } from './write-pdf-object.ts'

/** Where the new objects begin, and the date every attachment carries. */
export interface AttachmentPlace {
  readonly first: number
  readonly date: Date
}

/**
 * Returns the objects that hold the attachments and what the catalogue must say of them. Bytes are stored as they are, without a filter:
 * a compressor's output may change from one Node to the next. Source: ISO 32000-1, 7.11.4; /AF from ISO 32000-2, 14.13.
 */
export function attachmentObjects(
  attachments: readonly Attachment[],
  place: AttachmentPlace,
): {
  objects: NewObject[]
  catalog: Record<string, PdfValue>
} {
  const objects = attachments.flatMap((file, index) =>
    fileObjects(file, { first: place.first + 2 * index, date: place.date }),
  )
  if (objects.length === 0) return { objects, catalog: {} }
  const listed = attachments.map((file, index) => ({
    key: pdfText(file.name),
    file: pdfReference(place.first + 2 * index + 1),
  }))
  const sorted = [...listed].sort((a, b) => Buffer.compare(keyBytes(a.key), keyBytes(b.key)))
  const names = pdfDictionary({ Names: sorted.flatMap(entry => [entry.key, entry.file]) })
  return { objects, catalog: { Names: pdfDictionary({ EmbeddedFiles: names }), AF: listed.map(entry => entry.file) } }
}

function fileObjects(file: Attachment, place: AttachmentPlace): NewObject[] {
  const content = pdfReference(place.first)
  const date = pdfDate(place.date)
  const params = pdfDictionary({ Size: file.bytes.length, CreationDate: date, ModDate: date })
  const specification = pdfDictionary({
    Type: pdfName('Filespec'),
    F: pdfText(file.name.replace(/[^\x20-\x7E]/g, '_')),
    UF: pdfText(file.name),
    Desc: pdfText(file.description),
    AFRelationship: pdfName(file.relationship),
    EF: pdfDictionary({ F: content, UF: content }),
  })
  const stream = pdfDictionary({ Type: pdfName('EmbeddedFile'), Subtype: pdfName(file.mime), Params: params })
  return [
    { number: place.first, value: stream, stream: file.bytes },
    { number: place.first + 1, value: specification },
  ]
}

function keyBytes(key: PdfValue): Buffer {
  return Buffer.from(typeof key === 'object' && key !== null && 'bytes' in key ? key.bytes : '', 'latin1')
}
