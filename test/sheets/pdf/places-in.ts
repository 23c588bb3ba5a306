import { inflateSync } from 'node:zlib'

/**
 * For each number of the cross-reference stream at the end of a PDF, the number of the object that stands at its place. Read apart from the program:
 * ISO 32000-1, 7.5.7 and 7.5.8, rows of 1, 4 and 2 bytes with the predictor `up`.
 */
export function placesIn(pdf: Uint8Array): Map<number, number | undefined> {
  const bytes = Buffer.from(pdf)
  const at = Number(/startxref\n(\d+)\n%%EOF\n$/.exec(bytes.subarray(-60).toString('latin1'))?.[1])
  const rows = withoutPredictor(streamAt(bytes, at))
  const places = new Map<number, number | undefined>()
  for (let number = 0; number * 7 < rows.length; number += 1) {
    const [kind, where, index] = [
      rows[number * 7],
      rows.readUInt32BE(number * 7 + 1),
      rows.readUInt16BE(number * 7 + 5),
    ]
    if (kind === 1) places.set(number, numberAt(bytes, where))
    if (kind === 2) places.set(number, headsOf(bytes, rows.readUInt32BE(where * 7 + 1))[2 * index])
  }
  return places
}

const numberAt = (bytes: Buffer, at: number): number | undefined => {
  const found = /^(\d+) 0 obj\n/.exec(bytes.toString('latin1', at, at + 20))
  return found ? Number(found[1]) : undefined
}

function streamAt(bytes: Buffer, at: number): Buffer {
  return inflateSync(bytes.subarray(bytes.indexOf('stream\n', at) + 'stream\n'.length), { finishFlush: 2 })
}

const heads = new Map<number, readonly number[]>()

/** Numbers and offsets before the first object of an object stream. */
function headsOf(bytes: Buffer, at: number): readonly number[] {
  const known = heads.get(at)
  if (known) return known
  const first = Number(/\/First (\d+)/.exec(bytes.toString('latin1', at, at + 200))?.[1])
  const found = streamAt(bytes, at).toString('latin1', 0, first).trim().split(' ').map(Number)
  heads.set(at, found)
  return found
}

function withoutPredictor(rows: Buffer): Buffer {
  const plain = Buffer.alloc((rows.length / 8) * 7)
  for (let row = 0; row * 8 < rows.length; row += 1)
    for (let column = 0; column < 7; column += 1)
      plain[row * 7 + column] = (rows[row * 8 + 1 + column] ?? 0) + (row > 0 ? (plain[row * 7 - 7 + column] ?? 0) : 0)
  return plain
}
