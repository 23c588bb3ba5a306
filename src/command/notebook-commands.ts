import { type Command, Option } from 'commander'
import type { Done } from './done.ts'
import type { IssueOptions } from './issue-options.ts'
import { format } from './option-kinds.ts'
import type { SchedulesOptions } from './schedules.ts'
import { type Starter, starters } from './starters.ts'
import type { Surroundings } from './surroundings.ts'

const starterLines = Object.entries(starters)
  .map(([name, { says }]) => `  ${name.padEnd(12)}${says}`)
  .join('\n')

/** Commands that read a notebook and give what it comes to. */
export function addNotebookCommands(program: Command, around: Surroundings, done: Done): void {
  const { terminal } = around
  program
    .command('start')
    .argument('[folder]', 'where to put it', '.')
    .addOption(new Option('--template <name>', 'which').choices(Object.keys(starters)).default('first'))
    .description('lay down a starter notebook that issues as it stands')
    .addHelpText('after', `\nTemplates:\n${starterLines}\n\nExample: undercroft start shelter`)
    .action(async (folder: string, options: { template: Starter }) =>
      done(await (await import('./start.ts')).start(around, folder, options)),
    )

  program
    .command('check')
    .argument('<file...>', 'notebooks; - reads standard input')
    .addOption(format(['text', 'json'], 'text'))
    .description('read, prove dimensions, evaluate; print diagnostics and the summary of checks')
    .addHelpText('after', '\nExample: undercroft check shelter/shelter.md')
    .action(async (files: string[], options: { format: 'text' | 'json' }) =>
      done(await (await import('./check.ts')).check(terminal, files, options)),
    )

  program
    .command('issue')
    .argument('<file>', 'a notebook; - reads standard input')
    .option('--out <folder>', 'where to write; the folder of the notebook when left out')
    .option('--draft', 'mark every page DRAFT; the only way to print a notebook with errors')
    .addOption(new Option('--paper <size>', 'paper, in place of what the notebook says').choices(['A4', 'letter']))
    .option('--since <revision>', 'mark what changed since a revision of version control, or since an older notebook')
    .option('--html-only', 'write the HTML file alone; needs no browser')
    .addOption(new Option('--browser <path>', 'the Chromium to print with').env('UNDERCROFT_BROWSER'))
    .addOption(format(['text', 'json'], 'text'))
    .description('write the calculation package: a PDF and one self-contained HTML file')
    .addHelpText('after', '\nExample: undercroft issue shelter/shelter.md --out out')
    .action(async (file: string, options: IssueOptions) =>
      done(await (await import('./issue.ts')).issue(around, file, options)),
    )

  program
    .command('results')
    .argument('<file>', 'a notebook; - reads standard input')
    .addOption(format(['json', 'table'], 'json'))
    .description('print every value, step and check')
    .addHelpText('after', '\nExample: undercroft results shelter/shelter.md --format table')
    .action(async (file: string, options: { format: 'json' | 'table' }) =>
      done(await (await import('./results.ts')).results(around, file, options)),
    )

  program
    .command('schedules')
    .argument('<file>', 'a notebook; - reads standard input')
    .argument('[name]', 'one of them, to standard output; left out, they are listed')
    .option('--out <folder>', 'write each to a file of this folder')
    .description('values for the drawings, and schedules of stores, bars and quantities, as CSV')
    .addHelpText('after', '\nExample: undercroft schedules shelter/shelter.md drawing-values')
    .action(async (file: string, name: string | undefined, options: SchedulesOptions) =>
      done(await (await import('./schedules.ts')).schedules(around, { file, name }, options)),
    )

  program
    .command('text')
    .argument('<file>', 'a notebook; - reads standard input')
    .option('--out <file>', 'where to write; standard output when left out')
    .description('the notebook with its answers filled in, as Markdown that reads well on a code host')
    .addHelpText('after', '\nExample: undercroft text shelter/shelter.md --out shelter/filled.md')
    .action(async (file: string, options: { out?: string }) =>
      done(await (await import('./text.ts')).text(around, file, options)),
    )
}
