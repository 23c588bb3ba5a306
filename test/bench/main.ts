import { benchCommands } from './commands.ts'
import { benchEvaluation } from './evaluation.ts'
import { benchFormulas } from './formulas.ts'
import { benchReading } from './reading.ts'
import { benchStudies } from './studies.ts'

process.stdout.write(`Node ${process.version}, ${process.platform} ${process.arch}; medians of one run\n`)
benchFormulas()
benchEvaluation()
benchReading()
await benchStudies()
await benchCommands()
