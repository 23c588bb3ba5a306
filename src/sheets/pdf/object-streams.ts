import { pdfName } from './pdf-object.ts'
import { packedStream } from './pdf-streams.ts'

/** An object that is no stream, as text. */
export interface PlainObject {
  readonly number: number
  readonly text: string
}

/** Where an object stands inside an object stream. */
export interface PackedPlace {
  readonly stream: number
  readonly index: number
}

/** A reader unpacks a whole stream to come at one object: not all go into one. */
const mostTogether = 500

/** Returns object streams, numbered from `first`, that hold all these objects, and where each stands. Source: ISO 32000-1, 7.5.7. */
export function objectStreams(
  objects: readonly PlainObject[],
  first: number,
): { readonly streams: readonly Buffer[]; readonly places: ReadonlyMap<number, PackedPlace> } {
  const streams: Buffer[] = []
  const places = new Map<number, PackedPlace>()
  for (let from = 0; from < objects.length; from += mostTogether) {
    const together = objects.slice(from, from + mostTogether)
    const stream = first + streams.length
    streams.push(objectStream(stream, together))
    for (const [index, { number }] of together.entries()) places.set(number, { stream, index })
  }
  return { streams, places }
}

function objectStream(number: number, objects: readonly PlainObject[]): Buffer {
  let at = 0
  const heads = objects.map(object => {
    const head = `${object.number} ${at}`
    at += object.text.length + 1
    return head
  })
  const head = `${heads.join(' ')}\n`
  const bytes = Buffer.from(`${head}${objects.map(({ text }) => text).join('\n')}\n`, 'latin1')
  return packedStream(number, { Type: pdfName('ObjStm'), N: objects.length, First: head.length }, bytes)
}
