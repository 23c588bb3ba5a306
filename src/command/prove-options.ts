/** How `prove` is called. */
export interface ProveOptions {
  readonly browser?: string
  readonly format: 'text' | 'json'
}
