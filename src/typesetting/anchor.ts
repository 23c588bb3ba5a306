/** A place on the page that can be linked to, with the number printed for it. */
export interface Anchor {
  readonly id: string
  readonly number: string
}
