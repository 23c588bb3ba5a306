import { type Command, Option } from 'commander'
import type { CompareOptions } from './compare.ts'
import type { Done } from './done.ts'
import { countOf, format, percentOf } from './option-kinds.ts'
import type { ProveOptions } from './prove-options.ts'
import type { Surroundings } from './surroundings.ts'
import type { TickOptions } from './tick-options.ts'
import type { TraceOptions } from './trace-options.ts'
import type { VaryOptions } from './vary-options.ts'

/** Commands for the one who checks: where a value comes from, how far it can move, what changed, what was ticked, what was issued; and the catalogue. */
export function addReviewCommands(program: Command, around: Surroundings, done: Done): void {
  const { terminal } = around
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
        'normal',
      ]),
    )
    .addOption(
      new Option('--coverage <percent>', 'what a range holds of a normal spread; 95 when left out').argParser(
        percentOf(1, 99.9),
      ),
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
}
