/** The text that the browser has once the late sheets stand in their places. Throws where one has no place that waits for it. */
export function withLate(print: string, late: ReadonlyMap<string, string>): string {
  return [...late].reduce((text, [id, html]) => {
    const place = new RegExp(`<section id="${id}" class="part ${id}"><h2>[^<]*</h2></section>`)
    if (!place.test(text)) throw new Error(`nothing waits for ${id}`)
    return text.replace(place, () => html)
  }, print)
}
