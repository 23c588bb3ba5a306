import type { Spread } from '../study/draw.ts'

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
  readonly spread?: Spread
  /** Percent of a normal distribution that a range holds; 95 where left out. */
  readonly coverage?: number
  readonly latin?: boolean
  readonly on?: readonly string[]
  readonly svg?: string
}
