import type { PackedPlace } from './object-streams.ts'
import { type PdfValue, pdfDictionary, pdfName } from './pdf-object.ts'
import { packedStream } from './pdf-streams.ts'

/** Where an object stands: at a byte of the file, or inside an object stream. */
export type ObjectPlace = number | PackedPlace

const columns = 7

/**
 * Returns the cross-reference stream `number` of a file whose objects stand at these places; what has no place is free. Each row is written as its
 * difference from the row above, which packs well. Source: ISO 32000-1, 7.5.8 and 7.4.4.4 (predictor 12).
 */
export function crossReference(
  number: number,
  places: ReadonlyMap<number, ObjectPlace>,
  trailer: Readonly<Record<string, PdfValue>>,
): Buffer {
  const size = number + 1
  const rows = Buffer.alloc(size * columns)
  for (let object = 0; object < size; object += 1) writeRow(rows, object * columns, places.get(object))
  const about = {
    Type: pdfName('XRef'),
    Size: size,
    W: [1, 4, 2],
    DecodeParms: pdfDictionary({ Predictor: 12, Columns: columns }),
    ...trailer,
  }
  return packedStream(number, about, differences(rows))
}

function writeRow(rows: Buffer, at: number, place: ObjectPlace | undefined): void {
  if (place === undefined) rows.writeUInt16BE(0xffff, at + 5)
  else if (typeof place === 'number') {
    rows[at] = 1
    rows.writeUInt32BE(place, at + 1)
  } else {
    rows[at] = 2
    rows.writeUInt32BE(place.stream, at + 1)
    rows.writeUInt16BE(place.index, at + 5)
  }
}

/** Rows with the mark of the predictor before each, less the row above. */
function differences(rows: Buffer): Buffer {
  const all = Buffer.alloc((rows.length / columns) * (columns + 1))
  for (let from = 0, to = 0; from < rows.length; from += columns, to += columns + 1) {
    all[to] = 2
    for (let column = 0; column < columns; column += 1) {
      const above = from === 0 ? 0 : (rows[from - columns + column] as number)
      all[to + 1 + column] = (rows[from + column] as number) - above
    }
  }
  return all
}
