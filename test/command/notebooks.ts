import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'

const front = `---
title: Roof of the store
project: Skerry Point field station
number: SP-C-020
prepared: I. Aldous, Skerry Works
date: 2026-03-02
---
`

/** A small notebook whose one check is satisfied; \`span\` decides it. */
const withSpan = (span: string): string => `${front}
# Roof

\`\`\`assume site
span: { value: ${span}, basis: drawing SP-12 }
load: { value: 20 kN/m^2, basis: soil on the roof }
\`\`\`

\`\`\`work strip
M = site.load * site.span^2 / 8    # moment of a strip
M <= 40 kN*m/m                     # what the slab carries
\`\`\`

The moment is :value[strip.M].
`

export const sound = withSpan('3 m')
export const failing = withSpan('5 m')
export const faulty = sound.replace('site.span^2', 'site.spam^2')
export const undated = sound.replace('date: 2026-03-02\n', '')

/** A stack of some eleven halvings, one more than the rule is good for, and some eight mean free paths at 2 MeV. */
export const deep = `${front}
\`\`\`calc halving-layers shield
layers:
  - { material: packed earth, thickness: 600 mm }
  - { material: concrete, thickness: 300 mm }
required_factor: 100
energy: 2 MeV
\`\`\`
`

/** An empty folder for one test, with the files given. */
export function folderWith(files: Readonly<Record<string, string | Uint8Array>> = {}): string {
  const folder = mkdtempSync(join(tmpdir(), 'undercroft-command-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  for (const [name, bytes] of Object.entries(files)) writeFileSync(join(folder, name), bytes)
  return folder
}
