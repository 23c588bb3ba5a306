import type {
  CaseInput,
  Condition,
  Input,
  Limit,
  Module,
  PublishedCase,
  QuantityInput,
  Step,
} from '../modules/module.ts'
import { type Citation, sources } from '../modules/sources.ts'

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

const code = (text: string): string => `\`${text}\``

/** The fenced block that an author pastes: it evaluates as it stands. */
export function pasteBlock(module: Module): string {
  const lines = Object.entries(module.example).flatMap(([name, value]) => inputLines(name, value))
  return [`\`\`\`calc ${module.id} ${blockName(module.id)}`, ...lines, '```'].join('\n')
}

const blockName = (id: string): string => id.replaceAll('-', '_')

function inputLines(name: string, value: CaseInput): string[] {
  if (typeof value === 'string') return [`${name}: ${value}`]
  const row = (fields: Readonly<Record<string, string>>): string =>
    Object.entries(fields)
      .map(([field, text]) => `${field}: ${inRow(text)}`)
      .join(', ')
  return [`${name}:`, ...value.map(fields => `  - { ${row(fields)} }`)]
}

/** In a row between braces a comma ends a value, so that words with one stand in quotes. */
const inRow = (text: string): string => (/[,[\]{}#]|: /.test(text) ? `'${text.replaceAll("'", "''")}'` : text)

function inputTable(module: Module): string {
  const rows = Object.entries(module.inputs).flatMap(([name, input]) => inputRows(name, input, ''))
  return ['| input | meaning | kind | allowed | when left out |', '| --- | --- | --- | --- | --- |', ...rows].join('\n')
}

function inputRows(name: string, input: Input, indent: string): string[] {
  const head = `| ${indent}${code(name)} | ${cell([input.says, input.note].filter(Boolean).join('. '))} |`
  if (input.kind === 'list') {
    const fields = Object.entries(input.fields).flatMap(([field, own]) => inputRows(field, own, `${code(name)} → `))
    return [`${head} rows | ${input.least} to ${input.most} rows | ${required} |`, ...fields]
  }
  if (input.kind === 'label') return [`${head} text | | ${input.optional ? 'no label' : required} |`]
  if (input.kind === 'choice') {
    const words = Object.entries(input.words).map(([word, says]) => `${code(word)}: ${cell(says)}`)
    return [`${head} choice | ${words.join('; ')} | ${input.default === undefined ? required : code(input.default)} |`]
  }
  return [`${head} ${input.dimension.replaceAll('_', ' ')} | ${cell(rangeText(input))} | ${defaultText(input)} |`]
}

const required = 'required'
const cell = (text: string): string => text.replaceAll('|', '\\|')

function defaultText({ default: preset, optional }: QuantityInput): string {
  if (preset !== undefined) return code(preset)
  return optional ? 'not considered' : required
}

function rangeText({ above, below, least, most, usual, when }: QuantityInput): string {
  return [
    above === undefined ? '' : `above ${above}`,
    least === undefined ? '' : `at least ${least}`,
    below === undefined ? '' : `below ${below}`,
    most === undefined ? '' : `at most ${most}`,
    usual ? `usually ${usual[0]} to ${usual[1]}` : '',
    when ? `only where ${conditionText(when)}` : '',
  ]
    .filter(part => part !== '')
    .join(', ')
}

function stepList(steps: readonly Step[], indent = ''): string[] {
  return steps.flatMap(step => stepLines(step, indent))
}

function stepLines(step: Step, indent: string): string[] {
  const at = `${indent}- `
  const inner = `${indent}  `
  switch (step.kind) {
    case 'step':
      return [`${at}${code(`${step.name} = ${step.formula}`)}: ${step.says}${citationText(step.source)}`]
    case 'look':
      return [
        `${at}${code(step.name)} from ${step.table.title}, by ${[step.row, step.column]
          .filter(Boolean)
          .map(key => code(String(key)))
          .join(' and ')}: ${step.says}${citationText(step.table.source)}`,
      ]
    case 'each':
      return [`${at}for each row of ${code(step.list)}:`, ...stepList(step.steps, inner)]
    case 'pairs':
      return [
        `${at}for each two neighbouring rows of ${code(step.list)} (${code('prev_')} before a name of the earlier):`,
        ...stepList(step.steps, inner),
      ]
    case 'carried':
      return [
        `${at}${code(step.name)}: ${step.says} (first row ${code(step.first)}, then ${code(step.next)} of the row before)`,
      ]
    case 'take':
      return [`${at}${code(step.name)}: ${step.says} (${code(step.of)} of the ${step.from} row of ${code(step.list)})`]
    case 'when':
      return [
        `${at}where ${conditionText(step.condition)}${step.says === undefined ? '' : ` (${step.says})`}:`,
        ...stepList(step.yes, inner),
        ...(step.no.length > 0 ? [`${at}otherwise:`, ...stepList(step.no, inner)] : []),
      ]
    case 'solve':
      return [
        `${at}${Object.values(step.gives)
          .map(given => code(given.name))
          .join(', ')} by ${step.method.title}: ${step.says}${citationText(step.source)}`,
      ]
    case 'check':
      return [`${at}check ${code(step.formula)}: ${step.says}${citationText(step.source)}`]
  }
}

function citationText(source: Citation | undefined): string {
  if (!source) return ''
  return ` [${sources[source.key].short}${source.at ? `, ${source.at}` : ''}]`
}

function conditionText(condition: Condition): string {
  if ('formula' in condition) return code(condition.formula)
  if ('given' in condition) return `${code(condition.given)} is given`
  return `${code(condition.choice)} is ${condition.is.map(code).join(' or ')}`
}

function limitSection({ limits }: Module): string[] {
  return limits.length === 0 ? [] : ['## Limits', limitList(limits)]
}

function limitList(limits: readonly Limit[]): string {
  const lines = limits.map(
    limit =>
      `- ${limit.says} (${limit.when ? `where ${conditionText(limit.when)}: ` : ''}${conditionText(limit.holds)}): ${limit.otherwise === 'refuse' ? 'refused outside' : 'a warning outside'}${citationText(limit.source)}`,
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
