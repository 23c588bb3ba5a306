import type { CaseInput } from '../../src/modules/module.ts'
import { fence } from './run-text.ts'

const quoted = (text: string): string => `'${text.replaceAll("'", "''")}'`

const valueText = (value: CaseInput): string =>
  typeof value === 'string'
    ? quoted(value)
    : `\n${value
        .map(
          row =>
            `  - { ${Object.entries(row)
              .map(([key, text]) => `${key}: ${quoted(text)}`)
              .join(', ')} }`,
        )
        .join('\n')}`

/** A calc block as an author would write it. */
export const calcText = (module: string, name: string, inputs: Readonly<Record<string, CaseInput>>): string =>
  fence(
    `calc ${module} ${name}`,
    Object.entries(inputs)
      .map(([key, value]) => `${key}: ${valueText(value)}`)
      .join('\n'),
  )
