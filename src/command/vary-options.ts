/** How `vary` is called. */
export interface VaryOptions {
  readonly format: 'text' | 'json'
  readonly ranges?: boolean
  /** `NAME=FROM..TO[/N]`. */
  readonly sweep?: string
  readonly samples?: number
  readonly seed: number
  readonly spread: 'uniform' | 'triangular'
  readonly latin?: boolean
  readonly on?: readonly string[]
  readonly svg?: string
}
