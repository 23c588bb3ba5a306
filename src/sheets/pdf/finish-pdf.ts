import type { Attachment } from '../attachment.ts'
import { type NewObject, packPdf } from './pack-pdf.ts'
import { attachmentObjects } from './pdf-attachments.ts'
import { type PdfDictionary, type PdfValue, pdfDictionary, pdfName, pdfReference } from './pdf-object.ts'
import { type PrintFailure, printFailure, UnreadablePdf } from './print-failure.ts'
import { dictionaryOf, entryOf, readSkiaPdf, type SkiaPdf } from './skia-pdf.ts'
import { pdfDate, pdfText } from './write-pdf-object.ts'
import { type PackageFacts, xmpPacket } from './xmp.ts'

/** What is put into a printed PDF so that it is the package: everything comes from the caller, nothing from the clock. */
export interface FinishOptions extends PackageFacts {
  /** SHA-256 in hexadecimal, of what makes this package this package; its first half becomes the file's identifier. */
  readonly sha256: string
  readonly attachments: readonly Attachment[]
}

/**
 * Returns the PDF with title, author, dates, identifier, language, metadata and attachments set, written anew in packed form:
 * the same bytes for the same PDF and options, always. Refuses a PDF that is not in Chromium's own plain form;
 * throws `RangeError` where the SHA-256 or the date is none.
 */
export function finishPdf(pdf: Uint8Array, options: FinishOptions): { ok: true; pdf: Uint8Array } | PrintFailure {
  if (!/^[\da-f]{64}$/i.test(options.sha256)) throw new RangeError('expected a SHA-256 in hexadecimal')
  try {
    const skia = readSkiaPdf(pdf)
    return {
      ok: true,
      pdf: packPdf(pdf, skia, { objects: newObjects(skia, options), sha256: options.sha256 }),
    }
  } catch (thrown) {
    if (!(thrown instanceof UnreadablePdf)) throw thrown
    return printFailure(
      'check-failed',
      thrown.message,
      'This browser writes PDF in a form that is not known here; print with the packed browser',
    )
  }
}

function newObjects(skia: SkiaPdf, options: FinishOptions): NewObject[] {
  const attached = attachmentObjects(options.attachments, { first: skia.size, date: options.date })
  const metadata = skia.size + attached.objects.length
  const producer = entryOf(skia, dictionaryOf(skia, skia.info), 'Producer') ?? pdfText('')
  return [
    ...attached.objects,
    { number: metadata, ...metadataStream(options, producer) },
    { number: skia.root, value: catalogOf(skia, options, { Metadata: pdfReference(metadata), ...attached.catalog }) },
    { number: skia.info, value: infoOf(options, producer) },
  ]
}

function metadataStream(facts: PackageFacts, producer: PdfValue): { value: PdfDictionary; stream: Uint8Array } {
  const words = typeof producer === 'object' && producer !== null && 'bytes' in producer ? producer.bytes : ''
  return {
    value: pdfDictionary({ Type: pdfName('Metadata'), Subtype: pdfName('XML') }),
    stream: Buffer.from(xmpPacket(facts, words), 'utf8'),
  }
}

function catalogOf(skia: SkiaPdf, facts: PackageFacts, added: Readonly<Record<string, PdfValue>>): PdfDictionary {
  const kept = Object.fromEntries(dictionaryOf(skia, skia.root).entries)
  const outlined = kept.Outlines === undefined ? {} : { PageMode: pdfName('UseOutlines') }
  return pdfDictionary({ ...kept, Version: pdfName('1.7'), Lang: pdfText(facts.language), ...outlined, ...added })
}

function infoOf(facts: PackageFacts, producer: PdfValue): PdfDictionary {
  return pdfDictionary({
    Title: pdfText(facts.title),
    ...(facts.author === undefined ? {} : { Author: pdfText(facts.author) }),
    ...(facts.creator === undefined ? {} : { Creator: pdfText(facts.creator) }),
    Producer: producer,
    CreationDate: pdfDate(facts.date),
    ModDate: pdfDate(facts.date),
  })
}
