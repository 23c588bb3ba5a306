import type { Condition, EachStep, Step } from '../modules/module.ts'
import { type Citation, sources } from '../modules/sources.ts'

/** As code. */
export const code = (text: string): string => `\`${text}\``

/** Steps as a list, those of rows and branches indented. */
export function stepList(steps: readonly Step[], indent = ''): string[] {
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
      return [`${at}${rowsText(step)}:`, ...stepList(step.steps, inner)]
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

/** Rows of the author's, or parts that the method makes. */
const rowsText = ({ list, made }: EachStep): string =>
  made
    ? `for each of ${made.count} parts, called ${code(list)} (${code(made.number)} is the number of the part)`
    : `for each row of ${code(list)}`

/** A source as it stands behind a line; empty where there is none. */
export function citationText(source: Citation | undefined): string {
  if (!source) return ''
  return ` [${sources[source.key].short}${source.at ? `, ${source.at}` : ''}]`
}

/** A condition in words. */
export function conditionText(condition: Condition): string {
  if ('formula' in condition) return code(condition.formula)
  if ('given' in condition) return `${code(condition.given)} is given`
  return `${code(condition.choice)} is ${condition.is.map(code).join(' or ')}`
}
