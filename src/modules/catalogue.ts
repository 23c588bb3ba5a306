import type { Module } from './module.ts'

/** Every module, listed once, by hand, in the order of the job. */
export const catalogue: readonly Module[] = []
