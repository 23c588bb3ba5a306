/** What `trace` may be told besides its notebook and the value. */
export interface TraceOptions {
  readonly to?: string
  readonly down?: boolean
  readonly up?: boolean
  readonly format: 'text' | 'json'
}
