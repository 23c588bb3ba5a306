import { type Passport, passportsOf } from '../evaluation/passport.ts'
import type { LateModel, Margins } from '../sheets/package-model.ts'
import { searchMargins } from '../study/margins.ts'
import { showMargins } from '../study/shown-margins.ts'
import type { Evaluated } from './evaluated.ts'
import { exitStatus } from './exit-status.ts'

type Results = Evaluated['results']

/** A package is composed more than once of one evaluation; this is found once. */
const found = new WeakMap<Results, LateModel>()
/** Who wants it at once goes on where the finding in turns has come to. */
const begun = new WeakMap<Results, Generator<undefined, void>>()

/** The margins of the register, by anchor, and the passports. A notebook with errors has no margins: what it cannot work out might turn first. */
export function lateModel(evaluated: Evaluated): LateModel {
  for (;;) {
    const model = foundOn(evaluated)
    if (model) return model
  }
}

/** The same a little at a time, so that the browser is answered in between; until it is stopped, which throws the reason. */
export async function lateModelInTurns(evaluated: Evaluated, signal?: AbortSignal): Promise<LateModel> {
  for (;;) {
    signal?.throwIfAborted()
    const model = foundOn(evaluated)
    if (model) return model
    await new Promise<void>(soon => setImmediate(soon))
  }
}

/** Goes on a little with the finding; nothing while it is not done. */
function foundOn(evaluated: Evaluated): LateModel | undefined {
  const { results } = evaluated
  const finding = begun.get(results) ?? find(evaluated)
  begun.set(results, finding)
  if (!found.has(results) && finding.next().done === true && !found.has(results))
    throw new Error('the finding of the margins was ended by a fault')
  return found.get(results)
}

function* find(evaluated: Evaluated): Generator<undefined, void> {
  const margins = yield* findMargins(evaluated)
  const passports = yield* findPassports(evaluated)
  found.set(evaluated.results, { ...(margins ? { margins } : {}), passports })
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
