import { zlibSync } from 'fflate'
import { type PdfDictionary, type PdfValue, pdfDictionary, pdfName } from './pdf-object.ts'
import { writePdfValue } from './write-pdf-object.ts'

/** Returns a stream object, ready to stand in a file. */
export function streamObject(number: number, about: PdfDictionary, bytes: Uint8Array): Buffer {
  const value = pdfDictionary({ ...Object.fromEntries(about.entries), Length: bytes.length })
  const head = Buffer.from(`${number} 0 obj\n${writePdfValue(value)} stream\n`, 'latin1')
  return Buffer.concat([head, bytes, Buffer.from('\nendstream\nendobj\n')])
}

/**
 * The same, its bytes compressed. The compressor is a library of fixed version: that of Node may give other bytes from one Node to the next.
 * Source: ISO 32000-1, 7.4.4.
 */
export function packedStream(number: number, about: Readonly<Record<string, PdfValue>>, bytes: Uint8Array): Buffer {
  return streamObject(
    number,
    pdfDictionary({ ...about, Filter: pdfName('FlateDecode') }),
    zlibSync(bytes, { level: 4 }),
  )
}
