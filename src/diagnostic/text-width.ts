const wide =
  /^(?:\p{Emoji_Presentation}|[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\ua960-\ua97c\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff01-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}])$/u
const none = /^(?:\p{Mn}|\p{Me}|\u200d|[\ufe00-\ufe0f])$/u

/**
 * Returns how many columns of a terminal one character takes: 0 for marks that stand on another, 2 for East Asian wide
 * characters and emoji, otherwise 1 (Unicode Standard Annex 11, without the ambiguous class).
 */
export function characterWidth(character: string): 0 | 1 | 2 {
  if (none.test(character)) return 0
  return wide.test(character) ? 2 : 1
}

/** Returns the columns a printable text takes. */
export function textWidth(text: string): number {
  let width = 0
  for (const character of text) width += characterWidth(character)
  return width
}
