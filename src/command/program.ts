import { Command, CommanderError, InvalidArgumentError, Option } from 'commander'
import type { CompareOptions } from './compare.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import type { IssueOptions } from './issue-options.ts'
import type { ProveOptions } from './prove.ts'
import type { SchedulesOptions } from './schedules.ts'
import { type Starter, starters } from './starters.ts'
import type { Surroundings } from './surroundings.ts'
import type { TickOptions } from './tick-options.ts'
import type { TraceOptions } from './trace-options.ts'
import type { VaryOptions } from './vary-options.ts'

const notes = `
Exit status: 0 all is well, 1 the notebook has errors or the package differs, 2 called wrongly, 3 a check is not satisfied,
4 the package could not be written, 70 a fault of the program itself.
Results are for review by a licensed engineer under the local code.`

const starterLines = Object.entries(starters)
  .map(([name, { says }]) => `  ${name.padEnd(12)}${says}`)
  .join('\n')

/** Runs one command line and returns its exit status. */
export async function runProgram(args: readonly string[], around: Surroundings): Promise<ExitStatus> {
  let status: ExitStatus = exitStatus.well
  const program = programOf(around, done => {
    status = done
  })
  try {
    await program.parseAsync(args, { from: 'user' })
  } catch (thrown) {
    if (!(thrown instanceof CommanderError)) throw thrown
    return thrown.exitCode === 0 ? exitStatus.well : exitStatus.called
  }
  return status
}

const format = (words: readonly string[], fallback: string): Option =>
  new Option('--format <format>', 'form of the answer').choices(words).default(fallback)

/** Reads a whole number between two others. */
const countOf =
  (least: number, most: number) =>
  (text: string): number => {
    const count = /^\d+$/.test(text) ? Number(text) : Number.NaN
    if (count >= least && count <= most) return count
    throw new InvalidArgumentError(`It is a whole number from ${least} to ${most}.`)
  }

function programOf(around: Surroundings, done: (status: ExitStatus) => void): Command {
  const { terminal } = around
  const program = new Command('undercroft')
    .description('Literate design notebooks for buried protective structures: Markdown in, a calculation package out.')
    .version(around.version)
    .exitOverride()
    .showHelpAfterError('(--help shows how)')
    .configureOutput({ writeOut: text => terminal.answer(text), writeErr: text => terminal.say(text) })
    .addHelpText('after', notes)

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
    .addHelpText('after', '\nExample: undercroft schedules shelter/shelter.md drawing')
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

  program
    .command('trace')
    .argument('<file>', 'a notebook; - reads standard input')
    .argument('<name>', 'a value, `block.name`, or the number of a step, a check or an assumption')
    .option('--to <name>', 'only the paths between the two')
    .option('--down', 'only what it rests on')
    .option('--up', 'only what uses it')
    .addOption(format(['text', 'json'], 'text'))
    .description('what a value came from, down to the assumptions and tables, and all that uses it')
    .addHelpText('after', '\nExample: undercroft trace shelter/shelter.md levels.z_raft')
    .action(async (file: string, name: string, options: TraceOptions) =>
      done(await (await import('./trace.ts')).trace(around, { file, name }, options)),
    )

  program
    .command('vary')
    .argument('<file>', 'a notebook; - reads standard input')
    .option('--ranges', 'each assumption at both ends of its range: what moves most')
    .option('--sweep <name=from..to/n>', 'one assumption from end to end, in n places')
    .addOption(new Option('--samples <n>', 'draw all ranges so many times').argParser(countOf(1, 10_000_000)))
    .addOption(new Option('--seed <n>', 'start of the draws; 1 when left out').argParser(countOf(0, 2 ** 31 - 1)))
    .addOption(
      new Option('--spread <spread>', 'how an assumption is drawn; uniform when left out').choices([
        'uniform',
        'triangular',
      ]),
    )
    .option('--latin', 'draw a Latin hypercube')
    .option(
      '--on <name...>',
      'values, or numbers of checks, to look at; the largest ratio of each section when left out',
    )
    .option('--svg <file>', 'draw the answer of --ranges or --sweep')
    .addOption(format(['text', 'json'], 'text'))
    .description('how far each assumption can move by itself before a check turns; or what the ranges do')
    .addHelpText('after', '\nExample: undercroft vary shelter/shelter.md')
    .action(async (file: string, options: VaryOptions) =>
      done(await (await import('./vary.ts')).vary(around, file, options)),
    )

  program
    .command('compare')
    .argument('<old>', 'a notebook, a package, or a revision: HEAD~1, v1..v2, main...')
    .argument('<new>', 'a notebook; the file as it is now, where <old> is a revision')
    .option('--threshold <percent>', 'list results that moved by this much or more', '1')
    .addOption(format(['text', 'markdown', 'json'], 'text'))
    .description('assumptions and formulas that changed, what each moved, checks that turned, lines to check again')
    .addHelpText('after', '\nExample: undercroft compare shelter/shelter.md shelter/shelter.md')
    .action(async (old: string, now: string, options: CompareOptions) =>
      done(await (await import('./compare.ts')).compare(around, { old, now }, options)),
    )

  program
    .command('modules')
    .argument('[id]', 'one module')
    .addOption(format(['text', 'json'], 'text'))
    .description('the catalogue; or one module: question, inputs, limits, sources and a block to paste')
    .addHelpText('after', '\nExample: undercroft modules two-way-slab')
    .action(async (id: string | undefined, options: { format: 'text' | 'json' }) =>
      done(await (await import('./modules.ts')).modules(terminal, id, options)),
    )

  program
    .command('tick')
    .argument('<file>', 'a notebook')
    .argument(
      '[step...]',
      'steps (4.07), ranges (4.03-4.09), blocks (roof) or values (roof.M_x); left out, the record is told',
    )
    .option('--by <name>', 'who signs')
    .option('--on <date>', 'the day, as 2026-03-04; today when left out')
    .option('--remove', 'take the ticks of this name away')
    .option('--comment <text>', 'leave a comment at the steps, open until it is settled')
    .option('--settle <text>', 'settle the open comments at the steps with this answer')
    .option('--begin', 'lay down an empty record with a place for each block')
    .addOption(format(['text', 'json'], 'text'))
    .description('the checking record: ticks and comments that stand or fall with what they checked')
    .addHelpText('after', '\nExample: undercroft tick shelter/shelter.md')
    .action(async (file: string, steps: string[], options: TickOptions) =>
      done(await (await import('./tick.ts')).tick(around, file, { steps, options })),
    )

  program
    .command('prove')
    .argument('<package>', 'a PDF or HTML file that `issue` wrote')
    .addOption(new Option('--browser <path>', 'the Chromium to print with').env('UNDERCROFT_BROWSER'))
    .addOption(format(['text', 'json'], 'text'))
    .description('whether an issued package is what its attached notebook gives')
    .addHelpText('after', '\nExample: undercroft prove out/shelter.pdf')
    .action(async (file: string, options: ProveOptions) =>
      done(await (await import('./prove.ts')).prove(around, file, options)),
    )

  return program
}
