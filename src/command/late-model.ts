import { type Passport, passportsOf } from '../evaluation/passport.ts'
import type { LateModel, Margins } from '../sheets/package-model.ts'
import { searchMargins } from '../study/margins.ts'
import { showMargins } from '../study/shown-margins.ts'
import type { Evaluated } from './evaluated.ts'
import { exitStatus } from './exit-status.ts'

/** A package is composed more than once of one evaluation; this is found once. */
const found = new WeakMap<Evaluated['results'], LateModel>()

/** The margins of the register, by anchor, and the passports. A notebook with errors has no margins: what it cannot work out might turn first. */
export function lateModel(evaluated: Evaluated): LateModel {
  const finding = find(evaluated)
  for (let step = finding.next(); ; step = finding.next()) if (step.done) return step.value
}

/** The same a little at a time, so that the browser is answered in between. */
export async function lateModelInTurns(evaluated: Evaluated): Promise<LateModel> {
  const finding = find(evaluated)
  for (let step = finding.next(); ; step = finding.next()) {
    if (step.done) return step.value
    await new Promise<void>(soon => setImmediate(soon))
  }
}

function* find(evaluated: Evaluated): Generator<undefined, LateModel> {
  const { results } = evaluated
  const known = found.get(results)
  if (known) return known
  const margins = yield* findMargins(evaluated)
  const late = { ...(margins ? { margins } : {}), passports: yield* findPassports(evaluated) }
  found.set(results, late)
  return late
}

function* findMargins({ results, status }: Evaluated): Generator<undefined, Margins | undefined> {
  if (status === exitStatus.notebook) return undefined
  const { margins } = showMargins(yield* searchMargins(results.plan), results)
  return new Map(margins.map(margin => [margin.id, margin]))
}

function* findPassports({ results, workings }: Evaluated): Generator<undefined, readonly Passport[]> {
  const passports: Passport[] = []
  for (const passport of passportsOf(results, workings)) {
    passports.push(passport)
    yield undefined
  }
  return passports
}
