/** How `vary` is called. */
export interface VaryOptions {
  readonly format: 'text' | 'json'
  readonly ranges?: boolean
  /** `NAME=FROM..TO[/N]`. */
  readonly sweep?: string
  readonly samples?: number
  /** 1 where left out. */
  readonly seed?: number
  /** Uniform where left out. */
  readonly spread?: 'uniform' | 'triangular'
  readonly latin?: boolean
  readonly on?: readonly string[]
  readonly svg?: string
}
