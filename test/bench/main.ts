import { benchCommands } from './commands.ts'
import { benchEvaluation } from './evaluation.ts'
import { benchFormulas } from './formulas.ts'
import { benchReading } from './reading.ts'
import { benchStudies } from './studies.ts'

const parts: Readonly<Record<string, () => void | Promise<void>>> = {
  formulas: benchFormulas,
  evaluation: benchEvaluation,
  reading: benchReading,
  studies: benchStudies,
  commands: benchCommands,
}

const asked = process.argv.slice(2)
const unknown = asked.filter(name => !Object.hasOwn(parts, name))
if (unknown.length > 0)
  throw new RangeError(`no part ${unknown.join(', ')}: there are ${Object.keys(parts).join(', ')}`)

process.stdout.write(`Node ${process.version}, ${process.platform} ${process.arch}; medians of one run\n`)
for (const [name, bench] of Object.entries(parts)) if (asked.length === 0 || asked.includes(name)) await bench()
