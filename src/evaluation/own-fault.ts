import type { Diagnostic } from '../diagnostic/diagnostic.ts'
import { lookAt } from './plan-look.ts'
import type { PlannedLine } from './plan-types.ts'

/** What is wrong with a line that came to nothing although all it uses have a number. */
export function ownFault(line: PlannedLine, slots: Float64Array): Diagnostic {
  const fault = (rule: Diagnostic['rule'], says: string): Diagnostic => ({
    rule,
    severity: 'error',
    place: line.place,
    says,
    ...(rule === 'value-not-finite' && { help: endless }),
  })
  switch (line.kind) {
    case 'look': {
      const found = lookAt(line, slots)
      const why = found.ok ? 'the value is too great' : found.says
      return fault('lookup-outside-table', `\`${line.gives.name}\`: ${why} (${line.table.title})`)
    }
    case 'solve': {
      const answer = line.solve(slots)
      const why = answer.ok ? 'a value is not finite' : answer.says
      const names = line.gives.map(({ entity }) => `\`${entity.name}\``).join(', ')
      return fault('solve-failed', `${names}: ${line.step.method.title} gave no answer: ${why}`)
    }
    case 'formula':
      return fault(
        'value-not-finite',
        `${written(line.gives.name, line.formula.text)} has no finite value for these numbers`,
      )
    case 'check':
      return fault('value-not-finite', `The check \`${line.formula.text}\` has no finite value for these numbers`)
    case 'branch':
      return fault(
        'value-not-finite',
        `The condition \`${line.test?.formula.text}\` has no finite value for these numbers`,
      )
  }
}

const endless =
  'Look at the values that go in: something is divided by nothing, a root or logarithm is of a negative number, or a power passes all bounds'

const written = (name: string, formula: string): string => `\`${name} = ${formula}\``
