/** How `vary` is called. */
export interface VaryOptions {
  readonly format: 'text' | 'json'
}
