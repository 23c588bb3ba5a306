/** Text and attachments of the HTML, read from its characters: attachments are links that hold their file. */
export function readHtml(html: string): {
  readonly pages: readonly (readonly string[])[]
  readonly attachments: ReadonlyMap<string, Uint8Array>
} {
  const links = html.matchAll(
    /<a class="attachment" href="data:[\w/+.-]+;base64,([A-Za-z0-9+/=]*)" download="([^"]*)">/g,
  )
  const attachments = new Map(
    [...links].map(([, data = '', name = '']) => [unescaped(name), Buffer.from(data, 'base64')]),
  )
  return { attachments, pages: [htmlText(html)] }
}

/** As our HTML writes characters that would end an attribute. */
const unescaped = (text: string): string =>
  text.replace(/&#x([0-9A-Fa-f]+);/g, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)))

/** The pieces of text of an HTML file, whatever stands in its tags left aside. */
export const htmlText = (html: string): readonly string[] =>
  html
    .replace(/<style>[\s\S]*?<\/style>/g, '')
    .split(/<[^>]*>/)
    .map(piece => piece.trim())
    .filter(piece => piece !== '')
