import type { Limit, Module, PublishedCase } from '../modules/module.ts'
import { sources } from '../modules/sources.ts'
import { inputTable, pasteBlock } from './module-inputs.ts'
import { citationText, code, conditionText, stepList } from './module-steps.ts'

/** One module as a Markdown page: question, inputs, steps, limits, cautions, second method, published cases and a block to paste. */
export function modulePage(module: Module): string {
  return `${[
    `# ${module.id}: ${module.title}`,
    module.asks,
    `Version ${module.version}.${module.code ? ` Code: ${module.code}.` : ''} Main results: ${module.results.map(code).join(', ')}.`,
    '## A block to paste',
    pasteBlock(module),
    '## Inputs',
    inputTable(module),
    '## Steps',
    'In the order of the working. A branch prints the side that its condition chose.',
    stepList(module.steps).join('\n'),
    ...limitSection(module),
    ...secondSection(module),
    '## Cautions',
    module.cautions
      .map(
        caution =>
          `- ${typeof caution === 'string' ? caution : `${caution.says} (where ${conditionText(caution.when)})`}`,
      )
      .join('\n'),
    '## Published cases',
    'Run by the tests and printed in the record of every package that uses the module.',
    module.published.map(caseText).join('\n'),
    ...sourceSection(module),
  ].join('\n\n')}\n`
}

function limitSection({ limits }: Module): string[] {
  return limits.length === 0 ? [] : ['## Limits', limitList(limits)]
}

function limitList(limits: readonly Limit[]): string {
  const lines = limits.map(
    limit =>
      `- ${limit.says} (${limit.when ? `where ${conditionText(limit.when)}: ` : ''}${limit.each ? `in each row of ${code(limit.each)}: ` : ''}${conditionText(limit.holds)}): ${limit.otherwise === 'refuse' ? 'refused outside' : 'a warning outside'}${citationText(limit.source)}`,
  )
  return lines.join('\n')
}

function secondSection({ second }: Module): string[] {
  if (!second) return []
  const compared = second.compare.map(
    compare =>
      `- ${code(compare.second)} against ${code(compare.first)}, within ${percent(compare.band)}: ${compare.says}`,
  )
  const limits = second.limits ? ['Limits of this method alone:', limitList(second.limits)] : []
  return [
    '## Second method',
    `${second.title}. ${second.says}`,
    stepList(second.steps).join('\n'),
    compared.join('\n'),
    ...limits,
  ]
}

const percent = (band: number): string => `${Number((band * 100).toPrecision(3))} %`

function caseText(published: PublishedCase): string {
  const answers = Object.entries(published.answers).map(([name, answer]) => `${code(name)} ${answer}`)
  return `- ${published.source} (${published.status}): ${published.says}. ${answers.join(', ')}${toleranceText(published)}`
}

function toleranceText({ tolerance }: PublishedCase): string {
  if (!tolerance) return ''
  return 'relative' in tolerance
    ? ` (within ${percent(tolerance.relative)})`
    : ` (within ${tolerance.units} in the last figure)`
}

function sourceSection(module: Module): string[] {
  const keys = new Set(
    JSON.stringify(module)
      .match(/"key":"[^"]+"/g)
      ?.map(found => found.slice(7, -1)),
  )
  const entries = [...keys]
    .filter((key): key is keyof typeof sources => key in sources)
    .map(key => `- ${sources[key].entry}`)
  return entries.length === 0 ? [] : ['## Sources', entries.join('\n')]
}
