import type { ElementContent } from 'hast'
import type { BlockWorking, CheckLine } from '../evaluation/workings.ts'
import { prose, sentenceCase } from '../typesetting/prose.ts'
import { type Setting, settingIn } from '../typesetting/setting.ts'
import type { Placed } from './place-workings.ts'

/** A check with where it stands. */
export interface Checked {
  readonly line: CheckLine
  readonly block: BlockWorking
  readonly blockTitle: string
}

/** The checks of one section of the author's text, the tightest first. */
export interface CheckedSection {
  readonly title: string
  readonly checks: readonly Checked[]
}

/** Checks under the author's own sections (headings of the second level), the tightest first within each. */
export function checksBySection(headings: readonly Placed[]): CheckedSection[] {
  const sections: { title: string; checks: Checked[] }[] = []
  let title = 'Checks'
  for (const heading of headings) {
    if (!heading.block && heading.level === 2) title = heading.title
    const checks = heading.block ? checkedIn(heading.block, heading.title) : []
    if (checks.length === 0) continue
    const last = sections.at(-1)
    if (last?.title === title) last.checks.push(...checks)
    else sections.push({ title, checks })
  }
  return sections.map(section => ({ ...section, checks: section.checks.toSorted(tighter) }))
}

function checkedIn(block: BlockWorking, blockTitle: string): Checked[] {
  return block.checks.map(line => ({ line, block, blockTitle }))
}

/** Whether a check is about things that fit, not about strength, stability or service. */
export const isGeometry = ({ line }: Checked): boolean => line.aspect === 'geometry'

/** Not satisfied first; then strength, stability and service before geometry; then the higher ratio; checks without one last. */
export function worse(a: Checked, b: Checked): number {
  if (a.line.satisfied !== b.line.satisfied) return a.line.satisfied ? 1 : -1
  if (isGeometry(a) !== isGeometry(b)) return isGeometry(a) ? 1 : -1
  return tighter(a, b)
}

/** Not satisfied first; then the higher ratio, whatever the check is about; checks without one last. */
export function tighter(a: Checked, b: Checked): number {
  if (a.line.satisfied !== b.line.satisfied) return a.line.satisfied ? 1 : -1
  return (b.line.ratio?.value ?? -1) - (a.line.ratio?.value ?? -1)
}

/** The worst check of strength, stability or service, and the worst of geometry: what governs, each where there is one. */
export function governing(checks: readonly Checked[]): { readonly main?: Checked; readonly geometry?: Checked } {
  const sorted = checks.toSorted(worse)
  const [main, geometry] = [sorted.find(check => !isGeometry(check)), sorted.find(isGeometry)]
  return { ...(main ? { main } : {}), ...(geometry ? { geometry } : {}) }
}

/** What a check says, with the symbols of its block, and of which row of a list. */
export function checkWords({ line, block }: Checked, setting: Setting): ElementContent[] {
  const row = line.row?.label ? `: ${line.row.label}` : ''
  return prose(sentenceCase(line.says) + row, settingIn(setting, block))
}
