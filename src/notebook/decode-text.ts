import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { linesOf, placeOf } from './lines.ts'

/**
 * Returns the text of a file, byte order mark and all. Where the bytes are not UTF-8 there is a fault as well, and each bad
 * byte is U+FFFD in the text.
 */
export function decodeText(bytes: Uint8Array): { readonly text: string; readonly fault?: Diagnostic } {
  try {
    return { text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) }
  } catch (thrown) {
    if (!(thrown instanceof TypeError)) throw thrown
    const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes)
    return { text, fault: notUtf8(text, bytes) }
  }
}

function notUtf8(text: string, bytes: Uint8Array): Diagnostic {
  const offset = firstBad(text, bytes)
  const wide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)
  const says = wide
    ? 'The file is UTF-16, and a notebook is UTF-8'
    : 'The file is not UTF-8 text: this byte is no part of a character'
  const place = placeOf(linesOf(text), offset, offset + 1)
  return { rule: 'file-not-utf8', severity: 'error', place, says, help: 'Save the file as UTF-8' }
}

/** A U+FFFD of the text is a bad byte unless the author wrote U+FFFD itself, which is EF BF BD in the file. */
function firstBad(text: string, bytes: Uint8Array): number {
  const encoder = new TextEncoder()
  for (let at = text.indexOf('\ufffd'), byte = 0, from = 0; at >= 0; from = at, at = text.indexOf('\ufffd', at + 1)) {
    byte += encoder.encode(text.slice(from, at)).length
    if (bytes[byte] !== 0xef || bytes[byte + 1] !== 0xbf || bytes[byte + 2] !== 0xbd) return at
  }
  return 0
}
