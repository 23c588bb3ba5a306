/** Options of `tick`, as typed. */
export interface TickOptions {
  readonly by?: string
  readonly on?: string
  readonly remove?: boolean
  readonly comment?: string
  readonly settle?: string
  readonly begin?: boolean
  readonly format: 'text' | 'json'
}
