/** Returns text as it stands between or inside XML tags. */
export function xmlText(text: string): string {
  return text.replace(/[&<>"]/g, character => `&#${character.charCodeAt(0)};`)
}
