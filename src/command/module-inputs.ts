import type { CaseInput, Input, Module, QuantityInput } from '../modules/module.ts'
import { code, conditionText } from './module-steps.ts'

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

/** Every input with its kind, what is allowed, and what is taken where it is left out. */
export function inputTable(module: Module): string {
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

function defaultText({ default: preset, optional, when }: QuantityInput): string {
  if (preset !== undefined) return code(preset)
  if (optional) return 'not considered'
  return when ? `${required} there` : required
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
