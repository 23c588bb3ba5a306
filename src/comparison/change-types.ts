import type { Shown } from '../quantity/types.ts'

/** How far a typed number moved. */
export interface Step {
  /** New less old, in the unit the new value is typed in. */
  readonly amount: Shown
  /** Relative to the old value; absent where that is nought or a temperature on a scale. */
  readonly share?: number
}

/** A further thing said of an assumption or a line that changed: basis, status, range, remark. */
export interface FieldChange {
  readonly field: string
  readonly old: string
  readonly now: string
}

/** What was done to it. */
export type Action = 'changed' | 'added' | 'removed' | 'renamed'

/** One change of meaning between the two notebooks, in the author's words. */
export interface Change {
  /** `c1`, `c2`, … in the order of the list. */
  readonly id: string
  readonly what: 'assumption' | 'input' | 'formula' | 'check' | 'table' | 'module' | 'block' | 'title' | 'notice'
  readonly action: Action
  /** `site.water_depth`, a block's name, a key of the title block. */
  readonly key: string
  /** As written; absent where it was added or removed. */
  readonly old?: string
  readonly now?: string
  readonly step?: Step
  readonly fields: readonly FieldChange[]
  /** False where only words changed, so that no number can have moved by it. */
  readonly bears: boolean
  /** Line of the new notebook; of the old one where it was removed. */
  readonly line: number
}

/** What differs in the text and not in the meaning, counted apart. */
export interface Restated {
  /** Keys whose value or formula is the same, written in another unit or form. */
  readonly written: readonly string[]
  /** Blocks in another order, or their inputs and lines. */
  readonly order: boolean
  /** Blocks whose comments or layout alone differ. */
  readonly layout: readonly string[]
  /** Paragraphs of the text around the blocks that are in one of the two notebooks only. */
  readonly paragraphs: { readonly added: number; readonly removed: number }
}
