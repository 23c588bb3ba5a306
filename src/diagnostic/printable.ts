const steering = /[\p{Cc}\p{Cs}\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/gu

/**
 * Returns the text with every character that would steer a terminal shown instead of obeyed: control characters become
 * their pictures (U+2400 on), and marks that turn the direction of writing, a lone surrogate or a BOM become U+FFFD.
 */
export const printable = (text: string): string => text.replaceAll(steering, picture)

/** The same of a text of several lines, which stay lines. */
export const printableLines = (text: string): string => text.split('\n').map(printable).join('\n')

function picture(character: string): string {
  const code = character.charCodeAt(0)
  if (code < 0x20) return String.fromCharCode(0x2400 + code)
  return code === 0x7f ? '\u2421' : '\ufffd'
}
