import { atNeed } from './at-need.ts'
import type { Module } from './module.ts'

/** The modules of these ids; the whole catalogue where it has no module of one of them, so that the nearest can be named. */
export async function modulesNamed(ids: readonly string[]): Promise<readonly Module[]> {
  const loads = [...new Set(ids)].map(id => (Object.hasOwn(atNeed, id) ? atNeed[id] : undefined))
  if (loads.some(load => !load)) return (await import('./catalogue.ts')).catalogue
  return Promise.all(loads.flatMap(load => load?.() ?? []))
}
