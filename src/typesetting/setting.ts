import type { BlockWorking, Workings } from '../evaluation/workings.ts'
import type { Anchor } from './anchor.ts'
import type { CheckerMark } from './checker-mark.ts'
import { type FirstUses, firstUses } from './first-uses.ts'
import type { Medium } from './medium.ts'
import type { Symbols } from './typeset-written.ts'

/** A source as it stands in the reference list. */
export interface Listed {
  readonly number: number
  readonly short: string
}

/** What every part of a page must know to be set: the medium, the reference list, the way back to users of a value, and what was said before. */
export interface Setting {
  readonly medium: Medium
  /** True: formulas as trees that any pipeline can walk, in place of raw nodes. */
  readonly parsed: boolean
  readonly reference: (key: string) => Listed | undefined
  /** Who uses a value, by its full name: `roof.M_x`. */
  readonly users: (name: string) => readonly Anchor[]
  readonly first: FirstUses
  /** What checkers have left at a step, by its anchor. */
  readonly checked?: ReadonlyMap<string, CheckerMark>
  /** What names in the sentences of a module mean, while something of that module is set. */
  readonly symbols?: Symbols
  /** Set while a row of a step is set whose words stand over it, and where `symbols`, its formula too; `short` without words of its own. */
  readonly row?: { readonly symbols: boolean; readonly short: boolean }
}

/** The setting of one package in one medium. */
export function settingOf(
  workings: Workings,
  how: { medium: Medium; parsed?: boolean; checked?: ReadonlyMap<string, CheckerMark> },
): Setting {
  const listed = new Map(workings.references.map(({ key, short }, index) => [key, { number: index + 1, short }]))
  return {
    medium: how.medium,
    parsed: how.parsed ?? false,
    reference: key => listed.get(key),
    users: name => workings.users.get(name) ?? [],
    first: firstUses(workings),
    ...(how.checked ? { checked: how.checked } : {}),
  }
}

/** The setting for something of a block: names in its sentences are those of its module. */
export function settingIn(setting: Setting, block: BlockWorking | { readonly symbols: Symbols }): Setting {
  return 'symbols' in block ? { ...setting, symbols: block.symbols } : setting
}
