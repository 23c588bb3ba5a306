import { nearestName } from '../diagnostic/nearest-name.ts'
import type { Rule } from '../diagnostic/rules.ts'
import { afterComma, isCutOff } from './cut-off.ts'
import { error, type Reading } from './reading.ts'
import type { Keyed } from './types.ts'

interface Known {
  readonly keys: readonly string[]
  readonly rule: Rule
  /** Whose keys they are, at the head of a sentence: `An assumption`. */
  readonly of: string
  /** What to write where no key is near. */
  readonly help: string
  readonly reading: Reading
}

/** Reports every key that is not known here, with the nearest that is. */
export function refuseOtherKeys(entries: readonly Keyed[], { keys, rule, of, help, reading }: Known): void {
  for (const { key, value } of entries) {
    if (keys.includes(key.text)) continue
    const near = nearestName(key.text, keys)
    const says = `${of} has no key \`${key.text}\``
    const write = isCutOff(key, value) ? afterComma : help
    error(reading, rule, { place: key.place, says, help: near === undefined ? write : `Write \`${near}\`` })
  }
}
