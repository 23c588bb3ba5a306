import { printable } from '../diagnostic/printable.ts'

/** Text as typed, in one line; nothing where it says nothing or holds characters that would steer what prints them. */
export function plainWords(typed: string): string | undefined {
  const text = typed.replace(/[ \t\r\n]+/g, ' ').trim()
  return text === '' || printable(text) !== text ? undefined : text
}
